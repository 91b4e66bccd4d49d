package trimwright.ingest.nmea;

import java.util.List;
import trimwright.track.Paths;

/**
 * What a kind of sentence holds. The order is also the order of preference where several of one device give the same
 * quantity. Wind relative to the bow comes as R (apparent) or T (computed by the instrument); these are two layouts, so
 * that one can never be taken for the other.
 */
public enum NmeaLayout {
    RMC(Paths.LATITUDE, Paths.LONGITUDE, Paths.SOG, Paths.COG, Paths.VARIATION),
    GGA(Paths.LATITUDE, Paths.LONGITUDE),
    GLL(Paths.LATITUDE, Paths.LONGITUDE),
    VTG(Paths.SOG, Paths.COG, Paths.COG_MAGNETIC),
    ZDA(),
    HDT(Paths.HEADING),
    HDG(Paths.HEADING_MAGNETIC, Paths.DEVIATION, Paths.VARIATION),
    HDM(Paths.HEADING_MAGNETIC),
    VHW(Paths.STW, Paths.HEADING, Paths.HEADING_MAGNETIC),
    MWV_R(Paths.AWA, Paths.AWS),
    VWR(Paths.AWA, Paths.AWS),
    MWV_T(Paths.TWA_WATER, Paths.TWS),
    VWT(Paths.TWA_WATER, Paths.TWS),
    MWD(Paths.TWD, Paths.TWD_MAGNETIC, Paths.WIND_SPEED_OVER_GROUND),
    ROT(Paths.RATE_OF_TURN),
    XDR(Paths.ROLL, Paths.PITCH, Paths.RUDDER, Paths.AIR_TEMPERATURE, Paths.AIR_PRESSURE),
    MTW(Paths.WATER_TEMPERATURE);

    /** Values that the longest layout has. */
    static final int MOST_VALUES = 5;

    // The checker does not know that List.of gives a list that cannot change.
    @SuppressWarnings("ImmutableEnumChecker")
    private final List<String> paths;

    NmeaLayout(String... paths) {
        this.paths = List.of(paths);
    }

    /** Channels in the order of {@link NmeaReading#value}. */
    public List<String> paths() {
        return paths;
    }

    /** Whether each sentence names the time of its values. */
    public boolean hasOwnTime() {
        return this == RMC || this == GGA || this == GLL;
    }

    /** For names of groups: {@code mwv-r}. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
