package trimwright.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import trimwright.evidence.ReferenceFiles;
import trimwright.evidence.ReferenceTest;
import trimwright.evidence.ValidatedAgainst;

class CourseValidationTest {
    @ReferenceTest
    @ValidatedAgainst(
            source = "GEODESIC-SHORT",
            where = "20 short-range direct problems on WGS 84",
            tolerance = "1e-5 of the distance up to 5 km within 61 degrees of the equator: series of second order")
    void distancesInThePlaneAgreeWithTheGeodesic() {
        String text = new String(ReferenceFiles.bytes("oracles/geodesic_short_range.csv"), StandardCharsets.US_ASCII);
        int checked = 0;
        for (String line : text.split("\n")) {
            if (line.startsWith("#")) {
                continue;
            }
            String[] field = line.split(",");
            double distance = Double.parseDouble(field[3]);
            double latitude = Double.parseDouble(field[0]);
            if (distance > 5000 || Math.abs(latitude) > 61) {
                continue;
            }
            LocalPlane plane = new LocalPlane(position(field[0], field[1]));
            PlanePoint point = plane.toPlane(position(field[4], field[5]));
            assertEquals(distance, Math.hypot(point.north(), point.east()), 1e-5 * distance, line);
            double azimuth = Math.toRadians(Double.parseDouble(field[2]));
            assertEquals(distance * Math.cos(azimuth), point.north(), 2e-5 * distance, line);
            assertEquals(distance * Math.sin(azimuth), point.east(), 2e-5 * distance, line);
            checked++;
        }
        assertTrue(checked >= 8, "only " + checked + " lines were near enough");
    }

    private static Position position(String latitude, String longitude) {
        return new Position(
                Math.toRadians(Double.parseDouble(latitude)), Math.toRadians(Double.parseDouble(longitude)));
    }
}
