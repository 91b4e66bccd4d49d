package trimwright.layer;

/** What kind of flow a station of the boundary layer has. */
public enum Regime {
    LAMINAR,
    TURBULENT,
    WAKE
}
