package trimwright.text;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.util.JsonGeneratorDelegate;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;

/** Writes each floating-point number with the decimals that the unit at the end of its key asks for. */
public final class FixedDecimals extends JsonGeneratorDelegate {
    /** For keys whose ending is not listed. */
    private static final int OTHERWISE = 6;

    /** Chosen: one digit finer than anything the model or a sensor can claim. */
    private static final Map<String, Integer> BY_UNIT = Map.ofEntries(
            Map.entry("kn", 3),
            Map.entry("deg", 3),
            Map.entry("n", 1),
            Map.entry("nm", 1),
            Map.entry("kg", 2),
            Map.entry("m", 4),
            Map.entry("m2", 4),
            Map.entry("s", 3),
            Map.entry("w", 1),
            Map.entry("j", 1),
            Map.entry("hz", 4),
            Map.entry("percent", 3),
            Map.entry("celsius", 2),
            Map.entry("hpa", 2),
            Map.entry("ratio", 6));

    private FixedDecimals(JsonGenerator to) {
        super(to, false);
    }

    /** The decorator that {@link JsonOut} gives to Jackson. */
    static JsonGenerator decorate(JsonFactory factory, JsonGenerator generator) {
        return new FixedDecimals(generator);
    }

    /** Of the time ledger: its lines must add up to its total in the file as they do inside. */
    private static final int LEDGER = 9;

    /**
     * Decimals of a number under that key: {@code latitude_deg} and {@code longitude_deg} 7, {@code loss_s} and
     * {@code total_s} 9, others by their unit.
     */
    public static int of(String key) {
        if (key.equals("loss_s") || key.equals("total_s")) {
            return LEDGER;
        }
        if (key.endsWith("latitude_deg") || key.endsWith("longitude_deg")) {
            return 7;
        }
        return BY_UNIT.getOrDefault(key.substring(key.lastIndexOf('_') + 1), OTHERWISE);
    }

    @Override
    public void writeNumber(double value) throws IOException {
        if (!Double.isFinite(value)) {
            delegate.writeNull();
            return;
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(of(currentKey()), RoundingMode.HALF_EVEN);
        delegate.writeNumber(rounded.toPlainString());
    }

    @Override
    public void writeNumber(float value) throws IOException {
        writeNumber((double) value);
    }

    @Override
    public void writeArray(double[] values, int offset, int length) throws IOException {
        writeStartArray();
        for (int i = offset; i < offset + length; i++) {
            writeNumber(values[i]);
        }
        writeEndArray();
    }

    private String currentKey() {
        JsonStreamContext context = getOutputContext();
        while (context != null && !context.inObject()) {
            context = context.getParent();
        }
        String name = context == null ? null : context.getCurrentName();
        return name == null ? "" : name;
    }
}
