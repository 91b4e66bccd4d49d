package trimwright.dock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trimwright.sim.DockFaults;
import trimwright.sim.SensorFaults;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;

class DockCheckTest {
    private static final int SEEDS = 10;

    @Test
    void aSoundBoatPassesEveryLine() {
        for (long seed = 1; seed <= SEEDS; seed++) {
            for (DockLine line :
                    DockTracks.check(DockTracks.of(DockTracks.faults(), seed)).lines()) {
                // Of the wind a minute says no more in some winds than that it cannot be sure.
                boolean wind = line.item() == DockItem.WIND_ALIGNMENT || line.item() == DockItem.CLOCK;
                assertTrue(
                        line.finding() == DockFinding.NONE || (wind && line.finding() == DockFinding.UNSURE),
                        "seed " + seed + ": " + line);
            }
        }
    }

    static List<DockFaults.Plain> everyPlainFault() {
        return DockFaults.listKnown();
    }

    /** Each gauge that does not work is named on its own line, and no other gauge is blamed. */
    @ParameterizedTest
    @MethodSource("everyPlainFault")
    void aGaugeThatDoesNotWorkIsNamedAndNoOther(DockFaults.Plain plain) {
        for (long seed = 1; seed <= SEEDS; seed++) {
            DockAnswer.Checked checked = DockTracks.check(DockTracks.of(DockTracks.faults(plain), seed));
            DockLine line = checked.get(itemOf(plain));
            assertEquals(findingOf(plain), line.finding(), "seed " + seed + ": " + line);
            Set<DockItem> itsOwn = itemsOf(plain);
            for (DockLine other : checked.lines()) {
                assertTrue(
                        itsOwn.contains(other.item()) || other.verdict() != DockFinding.Verdict.STOP,
                        "seed " + seed + ": " + plain + " blamed on " + other);
            }
        }
    }

    @Test
    void ofTwoSwappedGaugesEachNamesTheOther() {
        DockAnswer.Checked checked = DockTracks.check(DockTracks.of(
                DockTracks.faults(new DockFaults.Plain(DockFaults.Gauge.CAMBER, DockFaults.Kind.SWAPPED)), 3));
        assertEquals(Paths.TWIST, checked.get(DockItem.CAMBER_PORT).other());
        assertEquals(Paths.CAMBER, checked.get(DockItem.TWIST_PORT).other());
        assertEquals(
                List.of(),
                checked.prior().stream()
                        .filter(offset -> offset.quantity() == DockOffset.Quantity.CAMBER
                                || offset.quantity() == DockOffset.Quantity.TWIST)
                        .toList());
    }

    /** The truth lies within what is read and its interval: of zeros of five gauges over 40 mornings in 95 % of cases. */
    @Test
    void intervalsOfZerosHoldTheTruth() {
        int held = 0;
        int all = 0;
        for (long seed = 201; seed <= 240; seed++) {
            DockFaults drawn = DockFaults.draw(seed);
            DockFaults faults = new DockFaults(
                    drawn.offsets(), drawn.flapMiddle(), drawn.camberRate(), drawn.twistRate(), List.of());
            DockAnswer.Checked checked = DockTracks.check(DockTracks.of(faults, seed));
            SensorFaults truth = faults.offsets();
            double[] truly = {
                truth.attitude().roll(),
                truth.attitude().pitch(),
                truth.wing().sheet(),
                truth.wing().camber(),
                faults.flapMiddle(),
                truth.wing().camber() - truth.wing().twist()
            };
            DockItem[] items = {
                DockItem.HEEL_ZERO,
                DockItem.PITCH_ZERO,
                DockItem.SHEET_ZERO,
                DockItem.FLAP_FOOT_ZERO,
                DockItem.FLAP_MIDDLE_ZERO,
                DockItem.FLAP_HEAD_ZERO
            };
            for (int i = 0; i < items.length; i++) {
                DockLine line = checked.get(items[i]);
                held += Math.abs(line.read() - truly[i]) <= line.error() ? 1 : 0;
                all++;
            }
        }
        // 240 intervals at 95 %: 217 or more but once in a thousand studies (binomial).
        assertTrue(held >= 217, held + " of " + all);
    }

    /** Rates, the load's factor and the wind's alignment come out as they were planted. */
    @Test
    void ratesAndFactorsComeOutAsPlanted() {
        for (long seed = 1; seed <= 20; seed++) {
            DockFaults drawn = DockFaults.draw(seed);
            DockFaults faults = new DockFaults(
                    drawn.offsets(), drawn.flapMiddle(), drawn.camberRate(), drawn.twistRate(), List.of());
            DockAnswer.Checked checked = DockTracks.check(DockTracks.of(faults, seed));
            double camber = faults.camberRate() * Math.toRadians(9);
            double twist = faults.twistRate() * Math.toRadians(5);
            for (DockItem item : List.of(DockItem.CAMBER_RATE_STARBOARD, DockItem.CAMBER_RATE_PORT)) {
                assertEquals(camber, checked.get(item).read(), 0.02 * camber, "seed " + seed);
            }
            for (DockItem item : List.of(DockItem.TWIST_RATE_STARBOARD, DockItem.TWIST_RATE_PORT)) {
                assertEquals(twist, checked.get(item).read(), 0.02 * twist, "seed " + seed);
            }
            for (DockOffset offset : checked.prior()) {
                double truth = switch (offset.quantity()) {
                    case ROLL -> faults.offsets().attitude().roll();
                    case PITCH -> faults.offsets().attitude().pitch();
                    case CAMBER -> faults.offsets().wing().camber();
                    case TWIST -> faults.offsets().wing().twist();
                    case SHEET -> faults.offsets().wing().sheet();
                    case WIND_ANGLE -> faults.offsets().wind().angle();
                    case SHEET_LOAD -> faults.offsets().wing().loadFactor();
                };
                assertEquals(truth, offset.value(), 3 * offset.standardError(), "seed " + seed + " " + offset);
            }
        }
    }

    @Test
    void withoutWhatPeopleMeasureTheLineSaysSo() {
        BoatTrack track = DockTracks.of(DockTracks.faults(), 1);
        DockAnswer.Checked checked = assertInstanceOf(
                DockAnswer.Checked.class,
                DockCheck.of(track, DockTracks.START, DockTracks.BOAT, DockTracks.WING, DockGiven.NONE));
        for (DockItem item : List.of(DockItem.LOAD_PULL, DockItem.ANTENNA_AFT, DockItem.ANTENNA_STARBOARD)) {
            assertEquals(DockFinding.NOT_GIVEN, checked.get(item).finding());
        }
        assertEquals(DockFinding.NONE, checked.get(DockItem.SHEET_ZERO).finding());
    }

    @Test
    void halfTheListIsCheckedAsFarAsItCame() {
        BoatTrack half = cut(DockTracks.of(DockTracks.faults(), 1), 2000);
        DockAnswer.Checked checked = DockTracks.check(half);
        assertEquals(DockFinding.NONE, checked.get(DockItem.CAMBER_STARBOARD).finding());
        assertEquals(DockFinding.NOT_YET, checked.get(DockItem.CAMBER_PORT).finding());
        assertEquals(DockFinding.NOT_YET, checked.get(DockItem.CLOCK).finding());
    }

    @Test
    void aBoatThatMovesOrTurnsOrSaysTooLittleIsNotChecked() {
        BoatTrack good = DockTracks.of(DockTracks.faults(), 1);
        assertEquals(DockAnswer.Reason.MOVING, refusal(with(good, Paths.SOG, 4000, 3)));
        assertEquals(DockAnswer.Reason.TURNING, refusal(with(good, Paths.HEADING, 4000, 2.5)));
        assertEquals(DockAnswer.Reason.TOO_SHORT, refusal(cut(good, 500)));
        assertEquals(DockAnswer.Reason.NOT_KNOWN, refusal(without(good, Paths.SOG)));
    }

    private static DockAnswer.Reason refusal(BoatTrack track) {
        return assertInstanceOf(
                        DockAnswer.Refused.class,
                        DockCheck.of(track, DockTracks.START, DockTracks.BOAT, DockTracks.WING, DockGiven.NONE))
                .reason();
    }

    private static BoatTrack cut(BoatTrack track, int samples) {
        ChannelGroup group = track.groups().get(0);
        long[] times = Arrays.copyOf(group.timesToArray(), samples);
        List<Channel> channels = new ArrayList<>();
        for (Channel channel : group.channels()) {
            channels.add(Channel.of(channel.path(), Arrays.copyOf(channel.toArray(), samples)));
        }
        return new BoatTrack(track.boat(), List.of(new ChannelGroup("all", times, channels)));
    }

    private static BoatTrack with(BoatTrack track, String path, int from, double value) {
        ChannelGroup group = track.groups().get(0);
        List<Channel> channels = new ArrayList<>();
        for (Channel channel : group.channels()) {
            double[] values = channel.toArray();
            if (channel.path().equals(path)) {
                Arrays.fill(values, from, from + 300, value);
            }
            channels.add(Channel.of(channel.path(), values));
        }
        return new BoatTrack(track.boat(), List.of(new ChannelGroup("all", group.timesToArray(), channels)));
    }

    private static BoatTrack without(BoatTrack track, String path) {
        ChannelGroup group = track.groups().get(0);
        List<Channel> channels = group.channels().stream()
                .filter(channel -> !channel.path().equals(path))
                .toList();
        return new BoatTrack(track.boat(), List.of(new ChannelGroup("all", group.timesToArray(), channels)));
    }

    /** The line that must name the fault. */
    private static DockItem itemOf(DockFaults.Plain plain) {
        return switch (plain.gauge()) {
            case ROLL -> DockItem.HEEL_SIDE;
            case PITCH -> DockItem.PITCH_ZERO;
            case HEADING -> DockItem.HEADING;
            case WIND -> DockItem.WIND_TURNS;
            case CAMBER -> DockItem.CAMBER_STARBOARD;
            case TWIST -> DockItem.TWIST_STARBOARD;
            case FLAP_MIDDLE -> DockItem.FLAP_MIDDLE_ZERO;
            case SHEET -> DockItem.SHEET_PORT;
            case SHEET_LOAD -> DockItem.LOAD_PULL;
        };
    }

    private static DockFinding findingOf(DockFaults.Plain plain) {
        return switch (plain.kind()) {
            case DEAD -> DockFinding.DEAD;
            case FROZEN -> DockFinding.FROZEN;
            case SIGN -> DockFinding.SIGN;
            case SWAPPED -> DockFinding.SWAPPED;
            // The demo boat's file says that it turns with the wing.
            case OTHER_MOUNT -> DockFinding.DOES_NOT_TURN;
        };
    }

    /** Lines that the fault may stop. */
    private static Set<DockItem> itemsOf(DockFaults.Plain plain) {
        Set<DockItem> flap = EnumSet.of(
                DockItem.CAMBER_STARBOARD, DockItem.CAMBER_PORT, DockItem.FLAP_FOOT_ZERO, DockItem.FLAP_HEAD_ZERO);
        Set<DockItem> twist = EnumSet.of(DockItem.TWIST_STARBOARD, DockItem.TWIST_PORT, DockItem.FLAP_HEAD_ZERO);
        return switch (plain.gauge()) {
            case ROLL -> EnumSet.of(DockItem.HEEL_ZERO, DockItem.HEEL_SIDE);
            case PITCH -> EnumSet.of(DockItem.PITCH_ZERO);
            case HEADING -> EnumSet.of(DockItem.HEADING);
            case WIND -> EnumSet.of(DockItem.WIND_TURNS, DockItem.WIND_ALIGNMENT, DockItem.WIND_SPEED);
            case CAMBER -> {
                flap.addAll(plain.kind() == DockFaults.Kind.SWAPPED ? twist : Set.of());
                yield flap;
            }
            case TWIST -> twist;
            case FLAP_MIDDLE -> EnumSet.of(DockItem.FLAP_MIDDLE_ZERO);
            case SHEET -> EnumSet.of(DockItem.SHEET_ZERO, DockItem.SHEET_PORT, DockItem.SHEET_STARBOARD);
            case SHEET_LOAD -> EnumSet.of(DockItem.LOAD_SLACK, DockItem.LOAD_PULL);
        };
    }
}
