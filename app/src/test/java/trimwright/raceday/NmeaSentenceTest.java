package trimwright.raceday;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NmeaSentenceTest {
    /** Published with these checksums; docs/sources.md, gpsd-nmea. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "GPHDT,274.07,T; $GPHDT,274.07,T*03",
                "HEROT,0.0,A; $HEROT,0.0,A*2B",
                "WIMWV,041.1,R,01.0,N,A; $WIMWV,041.1,R,01.0,N,A*16",
                "GNRMC,001031.00,A,4404.13993,N,12118.86023,W,0.146,,100117,,,A;"
                        + "$GNRMC,001031.00,A,4404.13993,N,12118.86023,W,0.146,,100117,,,A*7B"
            })
    void checksumsAreThePublishedOnes(String body, String sentence) {
        assertEquals(sentence + "\r\n", NmeaSentence.of(body));
    }

    @ParameterizedTest
    @CsvSource({
        "44.068998833, 4404.13993N",
        "-31.2, 3112.00000S",
        "9.9999999999, 1000.00000N",
        "-0.99999999999, 0100.00000S",
        "0, 0000.00000N"
    })
    void minutesNeverShowSixty(double degrees, String expected) {
        assertEquals(expected, NmeaSentence.latitude(degrees).replace(",", ""));
    }

    @Test
    void longitudesHaveThreeDigitsOfDegrees() {
        assertEquals("12118.86023,W", NmeaSentence.longitude(-121.314337166));
        assertEquals("18000.00000,E", NmeaSentence.longitude(179.99999999999));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 000000.00",
        "59999999999, 000059.99",
        "60000000000, 000100.00",
        "86399999999999, 235959.99",
        "86400000000000, 000000.00",
        "1804338000100000000, 130000.10"
    })
    void secondsNeverShowSixty(long nanos, String expected) {
        assertEquals(expected, NmeaSentence.time(nanos));
    }

    @ParameterizedTest
    @CsvSource({"359.97, 0.0", "359.94, 359.9", "-0.04, 0.0", "-10, 350.0", "0.05, 0.1"})
    void directionsNeverShowThreeHundredAndSixty(double degrees, String expected) {
        assertEquals(expected, NmeaSentence.direction(Math.toRadians(degrees)));
    }
}
