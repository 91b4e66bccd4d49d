package trimwright.platform;

/** Which main foils are down. */
public enum FoilSet {
    /** The windward one is lifted: least drag, most righting moment. */
    LEEWARD_DOWN,
    /** Both: for taking off and for turns. */
    BOTH_DOWN
}
