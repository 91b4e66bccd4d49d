package trimwright.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DecimalTextTest {
    @Test
    void everyNumberIsThatOfTheJdk() {
        Random random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            String text = switch (random.nextInt(4)) {
                case 0 -> String.format(Locale.ROOT, "%." + random.nextInt(12) + "f", random.nextGaussian() * 1000);
                case 1 -> Double.toString(random.nextGaussian() * Math.pow(10, random.nextInt(40) - 20));
                case 2 -> Long.toString(random.nextLong());
                default -> random.nextInt(100_000) + "." + Long.toUnsignedString(random.nextLong());
            };
            assertEquals(Double.parseDouble(text), parse(text), text);
        }
    }

    @Test
    void onlyWholeNumbersAreTaken() {
        for (String text :
                List.of("", " ", "-", ".", "1-2", "-1.-3", "1,5", "0x1", "1e", "1e+", "NaN", "1 2", "--1", "1e999")) {
            assertTrue(Double.isNaN(parse(text)), text);
        }
        assertEquals(26.5, parse("+26.5"));
        assertEquals(5, parse("5."));
        assertEquals(0.5, parse(" .5 "));
        byte[] comma = "1234,25".getBytes(StandardCharsets.ISO_8859_1);
        assertEquals(1234.25, DecimalText.parse(comma, 0, comma.length, (byte) ','));
    }

    private static double parse(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
        return DecimalText.parse(bytes, 0, bytes.length, (byte) '.');
    }
}
