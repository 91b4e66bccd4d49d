package trimwright.choice;

import java.util.List;
import java.util.Set;
import trimwright.aim.Gustiness;
import trimwright.keyfile.Key;
import trimwright.keyfile.KeyTable;

/** All keys of a forecast file. */
public final class ForecastKeys {
    public static final KeyTable TABLE = new KeyTable(
            "forecast/1",
            List.of(
                    Key.number("wind_kn", 2, 40, "expected mean wind of the race over ground, at 10 m"),
                    Key.number(
                                    "wind_spread_kn",
                                    0,
                                    15,
                                    "standard deviation of that mean: how far forecasts err; 2 where not given")
                            .orAbsent(),
                    Key.number(
                                    "from_deg",
                                    0,
                                    360,
                                    "direction that the wind comes from, clockwise from north; 0 where not given")
                            .orAbsent(),
                    Key.number(
                                    "shift_deg",
                                    0,
                                    45,
                                    "standard deviation of the direction from leg to leg; 5 where not given")
                            .orAbsent(),
                    Key.number(
                                    "turbulence_ratio",
                                    Gustiness.LEAST_TURBULENCE,
                                    Gustiness.MOST_TURBULENCE,
                                    "standard deviation of the wind over its mean within the race; 0.08 where not given")
                            .orAbsent(),
                    Key.number(
                                    "gust_factor_ratio",
                                    1.02,
                                    2.5,
                                    "largest mean of 3 s in 10 min over the mean wind, in place of the turbulence")
                            .orAbsent(),
                    Key.number("current_kn", 0, 10, "speed of the water over ground; 0 where not given")
                            .orAbsent(),
                    Key.number("current_to_deg", 0, 360, "direction that the water moves to; 0 where not given")
                            .orAbsent()),
            Set.of());

    /** Those that are numbers: all but the schema. */
    public static final List<Key> NUMBERS =
            TABLE.keys().stream().filter(key -> key.kind() == Key.Kind.NUMBER).toList();

    private ForecastKeys() {}
}
