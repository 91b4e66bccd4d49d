package trimwright.ingest.nmea;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.ingest.nmea.NmeaText.decode;
import static trimwright.ingest.nmea.NmeaText.decoded;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.evidence.ValidatedAgainst;
import trimwright.track.Paths;

/** Published example sentences: their check values, and what their fields say by the published layouts. */
class NmeaSentencesValidationTest {
    private static final double KNOT = 1852.0 / 3600.0;
    private static final double DEGREE = Math.PI / 180;
    /** Rounding of a few operations. */
    private static final double EXACT = 1e-12;

    private static final List<String> PUBLISHED = List.of(
            "$GPHDT,274.07,T*03",
            "$HEROT,0.0,A*2B",
            "$GPVTG,220.86,T,,M,2.550,N,4.724,K,A*34",
            "$HCXDR,A,171,D,PITCH,A,-37,D,ROLL,G,367,,MAGX,G,2420,,MAGY,G,-8984,,MAGZ*41",
            "$GNGLL,4404.14012,N,12118.85993,W,001037.00,A,A*67",
            "$GPZDA,160012.71,11,03,2004,-1,00*7D",
            "$GNRMC,001031.00,A,4404.13993,N,12118.86023,W,0.146,,100117,,,A*7B",
            "$GNGGA,001043.00,4404.14036,N,12118.85961,W,1,12,0.98,1113.0,M,-21.3,M,,*47",
            "$WIMWV,041.1,R,01.0,N,A*16",
            "$GPVHW,100.5,T,105.5,M,10.5,N,19.4,K*4F",
            "$IIVWR,75,R,1.0,N,0.51,M,1.85,K*6C",
            "$IIVWR,024,L,018,N,,,,*5e",
            "$IIVWR,,,,,,,,*53",
            "$IIVHW,201.1,T,209.2,M,6.5,N,12.0,K*6E",
            "$GNVTG,,,,,,,,,N*2E",
            "$GPRMC,,V,,,,,,,,,,N*53");

    @Test
    @ValidatedAgainst(
            source = "gpsd-nmea",
            where = "example sentences, with those of three other readers' documentation",
            tolerance = "exact")
    void checkValuesOfPublishedSentencesFit() {
        for (String line : PUBLISHED) {
            assertNotNull(decode(line), line);
            assertEquals(0, decoded(line).issues.total() - unknownTransducers(line), line);
            // Any other last digit must fail.
            char last = line.charAt(line.length() - 1);
            assertNull(decode(line.substring(0, line.length() - 1) + (last == '0' ? '1' : '0')), line);
        }
    }

    private static long unknownTransducers(String line) {
        return decoded(line).issues.count(trimwright.ingest.IssueKind.UNKNOWN_TRANSDUCER);
    }

    @Test
    @ValidatedAgainst(source = "gpsd-nmea", where = "layouts of GLL, RMC, GGA, ZDA", tolerance = "rounding")
    void positionsAndTimes() {
        double latitude = (44 + 4.14012 / 60) * DEGREE;
        double longitude = -(121 + 18.85993 / 60) * DEGREE;
        NmeaText.Decoded gll = decoded("$GNGLL,4404.14012,N,12118.85993,W,001037.00,A,A*67");
        assertEquals(latitude, gll.value(Paths.LATITUDE), EXACT);
        assertEquals(longitude, gll.value(Paths.LONGITUDE), EXACT);
        assertEquals((10 * 60 + 37) * 1_000_000_000L, gll.timeOfDayNanos);
        NmeaText.Decoded rmc = decoded("$GNRMC,001031.00,A,4404.13993,N,12118.86023,W,0.146,,100117,,,A*7B");
        assertEquals((44 + 4.13993 / 60) * DEGREE, rmc.value(Paths.LATITUDE), EXACT);
        assertEquals(0.146 * KNOT, rmc.value(Paths.SOG), EXACT);
        assertTrue(Double.isNaN(rmc.value(Paths.COG)));
        assertTrue(Double.isNaN(rmc.value(Paths.VARIATION)));
        NmeaText.Decoded gga = decoded("$GNGGA,001043.00,4404.14036,N,12118.85961,W,1,12,0.98,1113.0,M,-21.3,M,,*47");
        assertEquals(-(121 + 18.85961 / 60) * DEGREE, gga.value(Paths.LONGITUDE), EXACT);
        assertEquals(
                ((16 * 60L) * 60 + 12) * 1_000_000_000L + 710_000_000L,
                decoded("$GPZDA,160012.71,11,03,2004,-1,00*7D").timeOfDayNanos);
    }

    @Test
    @ValidatedAgainst(
            source = "gpsd-nmea",
            where = "layouts of MWV, VWR, VHW, VTG, HDT, ROT, XDR",
            tolerance = "rounding")
    void windSpeedsHeadingsAndAttitude() {
        NmeaText.Decoded mwv = decoded("$WIMWV,041.1,R,01.0,N,A*16");
        assertEquals(41.1 * DEGREE, mwv.value(Paths.AWA), EXACT);
        assertEquals(1.0 * KNOT, mwv.value(Paths.AWS), EXACT);
        NmeaText.Decoded port = decoded("$IIVWR,024,L,018,N,,,,*5e");
        assertEquals(-24 * DEGREE, port.value(Paths.AWA), EXACT);
        assertEquals(18 * KNOT, port.value(Paths.AWS), EXACT);
        NmeaText.Decoded vhw = decoded("$IIVHW,201.1,T,209.2,M,6.5,N,12.0,K*6E");
        assertEquals(6.5 * KNOT, vhw.value(Paths.STW), EXACT);
        assertEquals(201.1 * DEGREE, vhw.value(Paths.HEADING), EXACT);
        assertEquals(209.2 * DEGREE, vhw.value(Paths.HEADING_MAGNETIC), EXACT);
        NmeaText.Decoded vtg = decoded("$GPVTG,220.86,T,,M,2.550,N,4.724,K,A*34");
        assertEquals(220.86 * DEGREE, vtg.value(Paths.COG), EXACT);
        assertEquals(2.55 * KNOT, vtg.value(Paths.SOG), EXACT);
        assertEquals(274.07 * DEGREE, decoded("$GPHDT,274.07,T*03").value(Paths.HEADING), EXACT);
        assertEquals(0.0, decoded("$HEROT,0.0,A*2B").value(Paths.RATE_OF_TURN));
        NmeaText.Decoded xdr = decoded("$HCXDR,A,171,D,PITCH,A,-37,D,ROLL,G,367,,MAGX,G,2420,,MAGY,G,-8984,,MAGZ*41");
        assertEquals(-37 * DEGREE, xdr.value(Paths.ROLL), EXACT);
        assertEquals(171 * DEGREE, xdr.value(Paths.PITCH), EXACT);
    }

    @Test
    @ValidatedAgainst(source = "gpsd-aivdm", where = "TAG block example", tolerance = "exact")
    void tagBlockGivesItsTime() {
        String line = "\\g:1-2-73874,n:157036,s:r003669945,c:1241544035*4A\\" + NmeaText.sentence("IIHDM,1,M");
        assertEquals(1_241_544_035_000_000_000L, decoded(line).stampNanos);
        String second = "\\s:2573435,c:1699169531*03\\" + NmeaText.sentence("IIHDM,1,M");
        assertEquals(1_699_169_531_000_000_000L, decoded(second).stampNanos);
    }
}
