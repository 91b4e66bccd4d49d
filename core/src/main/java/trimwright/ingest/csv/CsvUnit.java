package trimwright.ingest.csv;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.units.Units;

/** Units that a column may be in, with the way to SI. */
public enum CsvUnit {
    METRE_PER_SECOND("m/s", 1, 0),
    KNOT("kn", Units.KNOT, 0),
    KILOMETRE_PER_HOUR("km/h", 1 / 3.6, 0),
    RADIAN("rad", 1, 0),
    DEGREE("deg", Math.PI / 180, 0),
    RADIAN_PER_SECOND("rad/s", 1, 0),
    DEGREE_PER_SECOND("deg/s", Math.PI / 180, 0),
    DEGREE_PER_MINUTE("deg/min", Math.PI / 180 / 60, 0),
    METRE("m", 1, 0),
    CENTIMETRE("cm", 0.01, 0),
    MILLIMETRE("mm", 0.001, 0),
    /** International foot, 0.3048 m exactly. */
    FOOT("ft", 0.3048, 0),
    NEWTON("N", 1, 0),
    KILONEWTON("kN", 1000, 0),
    /** Force that the standard fall gives a kilogram. */
    KILOGRAM_FORCE("kgf", Units.G, 0),
    /** The same of a tonne. */
    TONNE_FORCE("tf", 1000 * Units.G, 0),
    NEWTON_METRE("Nm", 1, 0),
    KELVIN("K", 1, 0),
    CELSIUS("C", 1, 273.15),
    PASCAL("Pa", 1, 0),
    HECTOPASCAL("hPa", 100, 0),
    KILOPASCAL("kPa", 1000, 0),
    BAR("bar", 100_000, 0),
    SECOND("s", 1, 0),
    RATIO("ratio", 1, 0),
    PERCENT("percent", 0.01, 0);

    private final String symbol;
    private final double factor;
    private final double offset;

    CsvUnit(String symbol, double factor, double offset) {
        this.symbol = symbol;
        this.factor = factor;
        this.offset = offset;
    }

    /** As a mapping writes it. */
    public String symbol() {
        return symbol;
    }

    public double toSi(double value) {
        return value * factor + offset;
    }

    public static @Nullable CsvUnit find(String symbol) {
        for (CsvUnit unit : values()) {
            if (unit.symbol.equals(symbol)) {
                return unit;
            }
        }
        return null;
    }

    public static List<String> symbols() {
        List<String> symbols = new ArrayList<>();
        for (CsvUnit unit : values()) {
            symbols.add(unit.symbol);
        }
        return symbols;
    }
}
