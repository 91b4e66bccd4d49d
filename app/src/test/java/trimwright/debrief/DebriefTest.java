package trimwright.debrief;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import trimwright.segment.Turn;
import trimwright.store.UtcOffset;
import trimwright.text.JsonOut;
import trimwright.text.UserInputException;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;
import trimwright.wind.Quantity;
import trimwright.wind.SyntheticTrack;
import trimwright.wind.WindCaveat;
import trimwright.wind.WindOptions;

class DebriefTest {
    private static final long START = SyntheticTrack.START;

    private static DebriefReport debrief(BoatTrack... tracks) {
        return Debrief.of(List.of(tracks), DebriefOptions.WITHOUT_BOAT);
    }

    private static DebriefReport asLogged(BoatTrack... tracks) {
        WindOptions wind = new WindOptions(WindOptions.DEFAULT.longestGap(), null, WindOptions.Sensors.AS_LOGGED);
        return Debrief.of(List.of(tracks), new DebriefOptions(null, null, null, wind));
    }

    private static String json(DebriefReport report) {
        ObjectNode document = JsonOut.document(DebriefJson.SCHEMA);
        DebriefJson.write(report, document);
        return JsonOut.text(document);
    }

    /** A tack, and a lull behind it; the sign turns the whole day over to the other side. */
    private static BoatTrack day(String boat, int sign) {
        BoatTrack track = new SyntheticTrack(400, 5)
                .wind(t -> 8 + 0.6 * Math.sin(t / 13), t -> sign * 4 * Math.sin(t / 40))
                .heading(t -> sign * (t < 200 ? -45 : Math.min(47, -45 + 11 * (t - 200))))
                .speed(t -> t > 200 && t < 220 ? 7 : 12 + Math.sin(t / 5))
                .attitude(t -> sign * (t < 204 ? 3 : -3), t -> 1)
                .build();
        return new BoatTrack(boat, track.groups());
    }

    private static BoatTrack only(BoatTrack track, String... paths) {
        ChannelGroup group = track.groups().get(0);
        List<Channel> kept = group.channels().stream()
                .filter(channel -> List.of(paths).contains(channel.path()))
                .toList();
        return new BoatTrack(track.boat(), List.of(new ChannelGroup("g", group.timesToArray(), kept)));
    }

    @Test
    void portAndStarboardAreJudgedAlike() {
        BoatDebrief one = debrief(day("Dunlin", 1)).boats().get(0);
        BoatDebrief other = debrief(day("Dunlin", -1)).boats().get(0);
        assertEquals(1, one.pieces().turns().size());
        assertEquals(one.pieces().phases().size(), other.pieces().phases().size());
        Turn turn = one.pieces().turns().get(0);
        Turn mirrored = other.pieces().turns().get(0);
        assertEquals(turn.span(), mirrored.span());
        assertEquals(turn.kind(), mirrored.kind());
        assertEquals(turn.entryTack().sign(), -mirrored.entryTack().sign());
        assertNotNull(turn.recovery());
        assertNotNull(mirrored.recovery());
        assertEquals(turn.recovery().metresLost(), mirrored.recovery().metresLost(), 1e-6);
        for (int i = 0; i < one.comparison().ledgers().size(); i++) {
            assertEquals(
                    one.comparison().ledgers().get(i).total(),
                    other.comparison().ledgers().get(i).total(),
                    1e-6);
        }
    }

    @Test
    void boatsShareOneClockAndDoNotDisturbEachOther() {
        // All boats' winds together tell what sensors read wrongly; as they read, each boat is by itself.
        DebriefReport both = asLogged(day("Dunlin", 1), day("Curlew", -1));
        assertEquals(
                List.of("Dunlin", "Curlew"),
                both.boats().stream().map(BoatDebrief::boat).toList());
        DebriefReport alone = asLogged(day("Curlew", -1));
        assertEquals(alone.boats().get(0).pieces(), both.boats().get(1).pieces());
    }

    @Test
    void aLogWithoutWindHeadingOrAnythingSaysSoAndDoesNotFail() {
        BoatTrack whole = day("Dunlin", 1);
        BoatDebrief noWind = debrief(only(whole, Paths.SOG, Paths.COG, Paths.HEADING))
                .boats()
                .get(0);
        assertTrue(noWind.wind().caveats().contains(WindCaveat.NO_WIND));
        assertEquals(0, noWind.pieces().legs().size());
        BoatDebrief noCompass = debrief(only(whole, Paths.SOG, Paths.COG, Paths.AWA, Paths.AWS))
                .boats()
                .get(0);
        assertTrue(noCompass.wind().caveats().contains(WindCaveat.HEADING_FROM_COURSE));
        assertEquals(1, noCompass.pieces().turns().size());
        BoatDebrief noSpeed = debrief(only(whole, Paths.HEADING)).boats().get(0);
        assertFalse(noSpeed.wind().has(Quantity.SPEED));
        for (String text :
                List.of(json(debrief(only(whole, Paths.SOG))), json(debrief(only(whole, Paths.HEADING, Paths.AWA))))) {
            assertFalse(text.contains("NaN") || text.contains("Infinity"));
        }
        assertFalse(DebriefText.of("x", debrief(only(whole, Paths.HEADING, Paths.AWA)), UtcOffset.NONE)
                .contains("NaN"));
    }

    @Test
    void noiseInEveryChannelIsSurvived() {
        Random random = new Random(9);
        long[] times = new long[3000];
        for (int i = 0; i < times.length; i++) {
            times[i] = START + i * 200_000_000L;
        }
        List<Channel> channels = Arrays.stream(Quantity.values())
                .filter(quantity -> quantity.path() != null)
                .map(quantity -> Channel.of(
                        String.valueOf(quantity.path()),
                        random.doubles(times.length, -9, 9)
                                .map(value -> random.nextInt(5) == 0 ? Double.NaN : value)
                                .toArray()))
                .toList();
        BoatTrack track = new BoatTrack("Dunlin", List.of(new ChannelGroup("g", times, channels)));
        String text = json(debrief(track));
        assertFalse(text.contains("NaN") || text.contains("Infinity"));
    }

    @Test
    void aSingleSampleIsADayWithoutPieces() {
        BoatTrack track = new BoatTrack(
                "Dunlin", List.of(new ChannelGroup("g", new long[] {START}, List.of(Channel.of(Paths.SOG, new double[] {
                    5
                })))));
        assertEquals(0, debrief(track).boats().get(0).pieces().legs().size());
    }

    @Test
    void wrongTimesAreRefusedInOneSentence() {
        long[] times = {START, START + 30L * 86_400 * 1_000_000_000L};
        BoatTrack track = new BoatTrack(
                "Dunlin", List.of(new ChannelGroup("g", times, List.of(Channel.of(Paths.SOG, new double[] {5, 5})))));
        // 30 days at one sample a second are within what a clock can hold, at 10 a second they are not.
        assertEquals(0, debrief(track).boats().get(0).pieces().legs().size());
        long[] years = {START, START + 3L * 365 * 86_400 * 1_000_000_000L};
        BoatTrack wrong = new BoatTrack(
                "Dunlin", List.of(new ChannelGroup("g", years, List.of(Channel.of(Paths.SOG, new double[] {5, 5})))));
        UserInputException refused = assertThrows(UserInputException.class, () -> debrief(wrong));
        assertTrue(String.valueOf(refused.getMessage()).startsWith("The time stamps span 1095 days"));
    }

    @Test
    void seriesHoldTheNumbersOfTheTrack() {
        BoatDebrief boat = debrief(day("Dunlin", 1)).boats().get(0);
        ChannelGroup series = DebriefSeries.of(boat, null);
        assertEquals(boat.wind().size(), series.size());
        Channel tws = series.find("debrief.tws");
        assertNotNull(tws);
        assertArrayEquals(boat.wind().toArray(Quantity.TWS), tws.toArray());
        assertEquals(series.channels().stream().map(Channel::path).toList(), DebriefSeries.names(boat.wind()));
    }
}
