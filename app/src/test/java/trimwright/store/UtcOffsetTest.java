package trimwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class UtcOffsetTest {
    private static final Instant WINTER = Instant.parse("2026-01-15T12:00:00Z");
    private static final Instant SUMMER = Instant.parse("2026-07-15T12:00:00Z");

    @Test
    void theNauticalZoneIsTheHourNearestToTheLongitude() {
        assertEquals("UTC", nameAt(7.4));
        assertEquals("UTC+01:00", nameAt(7.6));
        assertEquals("UTC-02:00", nameAt(-35));
        assertEquals("UTC+12:00", nameAt(179));
        assertEquals("UTC-12:00", nameAt(-179));
    }

    @Test
    void aStatedZoneFollowsItsRulesAtTheBeginOfTheSession() {
        ZoneId madrid = ZoneId.of("Europe/Madrid");
        assertEquals(new UtcOffset(3600, UtcOffset.From.LOG), UtcOffset.of(madrid, WINTER));
        assertEquals(new UtcOffset(7200, UtcOffset.From.LOG), UtcOffset.of(madrid, SUMMER));
        assertEquals(
                "UTC+05:45",
                UtcOffset.of(ZoneOffset.ofHoursMinutes(5, 45), WINTER).name());
        assertEquals(
                "UTC-03:30",
                UtcOffset.of(ZoneOffset.ofHoursMinutes(-3, -30), WINTER).name());
    }

    @Test
    void timesInUtcSayNothingAboutWhereTheBoatIs() {
        assertEquals(UtcOffset.NONE, UtcOffset.of(ZoneOffset.UTC, WINTER));
    }

    private static String nameAt(double degreesEast) {
        return UtcOffset.atLongitude(Math.toRadians(degreesEast)).name();
    }
}
