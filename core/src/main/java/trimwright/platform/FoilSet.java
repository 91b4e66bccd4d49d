package trimwright.platform;

/** Which main foils are down. */
public enum FoilSet {
    /** The windward one is lifted: least drag, most righting moment. */
    LEEWARD_DOWN,
    /** Both, as for taking off and in turns. Targets are sailed on the leeward one only, on the hulls too, unless a board is held down. */
    BOTH_DOWN
}
