package trimwright.wind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;
import trimwright.units.Angles;

/** Planted errors of wind sensors on boats that beat and run, each tack a minute long, in one wind that swings slowly. */
class WindAgreementTest {
    private static final double SECONDS = 1200;
    private static final int RATE = 5;

    /** What a sensor does wrong: upwash in 15 m/s of apparent wind (deg), more in less wind. */
    private record Fault(double askewDegrees, double upwashDegrees, double factor) {}

    private static BoatTrack sailed(int boat, Fault fault) {
        SyntheticTrack track = new SyntheticTrack(SECONDS, RATE)
                .heading(t -> heading(t + 17 * boat))
                .speed(t -> isBeating(t + 17 * boat) ? 9 : 12)
                .wind(t -> 8 + 0.3 * Math.sin(t / 90), t -> 4 * Math.sin(t / 110));
        return spoiled(track.build(), fault);
    }

    private static boolean isBeating(double time) {
        return time % 600 < 300;
    }

    private static double heading(double time) {
        double side = time % 120 < 60 ? 1 : -1;
        return side * (isBeating(time) ? 45 : 145);
    }

    private static BoatTrack spoiled(BoatTrack track, Fault fault) {
        List<ChannelGroup> groups = new ArrayList<>();
        for (ChannelGroup group : track.groups()) {
            Channel angles = group.find(Paths.AWA);
            Channel speeds = group.find(Paths.AWS);
            if (angles == null || speeds == null) {
                throw new IllegalStateException("no apparent wind");
            }
            double[] angle = angles.toArray();
            double[] speed = speeds.toArray();
            for (int i = 0; i < angle.length; i++) {
                double upwash = fault.upwashDegrees * Math.pow(15 / speed[i], 1.5) * Math.signum(angle[i]);
                angle[i] = Angles.signed(angle[i] + Math.toRadians(fault.askewDegrees + upwash));
                speed[i] *= fault.factor;
            }
            List<Channel> channels = new ArrayList<>(group.channels());
            channels.removeIf(c -> c.path().equals(Paths.AWA) || c.path().equals(Paths.AWS));
            channels.add(Channel.of(Paths.AWA, angle));
            channels.add(Channel.of(Paths.AWS, speed));
            groups.add(new ChannelGroup(group.name(), group.timesToArray(), channels));
        }
        return new BoatTrack(track.boat(), groups);
    }

    private static List<WindTrack> winds(List<BoatTrack> tracks) {
        SessionClock clock =
                SessionClock.covering(tracks.get(0).startNanos(), tracks.get(0).endNanos(), RATE);
        return tracks.stream()
                .map(track -> SailedWind.of(track, clock, null, WindOptions.DEFAULT))
                .toList();
    }

    private static double upwashAt15(WindCorrection correction) {
        return Math.toDegrees(correction.upwash().angle())
                * Math.pow(correction.upwash().speed() / 15, 1.5);
    }

    @Test
    void plantedErrorsOfThreeBoatsAreFound() {
        List<Fault> faults = List.of(new Fault(2, 3, 1.02), new Fault(-1, 1.5, 0.98), new Fault(0, 0, 1));
        List<BoatTrack> tracks = new ArrayList<>();
        for (int boat = 0; boat < faults.size(); boat++) {
            tracks.add(sailed(boat, faults.get(boat)));
        }
        List<WindCorrection> found = WindAgreement.of(winds(tracks));
        for (int boat = 0; boat < faults.size(); boat++) {
            Fault fault = faults.get(boat);
            WindCorrection correction = found.get(boat);
            assertFalse(correction.isNone());
            // Two standard errors: about 0.4 degrees and one per cent in winds as unsteady as are reckoned with.
            assertEquals(fault.askewDegrees, Math.toDegrees(correction.angle()), 0.8);
            assertEquals(fault.upwashDegrees, upwashAt15(correction), 0.8);
            assertEquals(fault.factor, correction.factor(), 0.02);
        }
    }

    @Test
    void aCorrectedBoatHasTheWindThatBlew() {
        BoatTrack track = sailed(0, new Fault(2, 3, 1.02));
        WindTrack logged = winds(List.of(track)).get(0);
        WindCorrection correction = WindAgreement.of(List.of(logged)).get(0);
        WindTrack mended = SailedWind.of(track, logged.clock(), null, WindOptions.DEFAULT, correction);
        assertTrue(mended.caveats().contains(WindCaveat.SENSOR_CORRECTED));
        assertTrue(error(mended) < error(logged) / 3, error(mended) + " after " + error(logged));
    }

    /** Root mean square of the wind's direction against the true one, where the boat does not turn (rad). */
    private static double error(WindTrack track) {
        double square = 0;
        int count = 0;
        for (int i = 0; i < track.size(); i++) {
            double time = track.clock().seconds(i);
            if (time % 60 > 10 && time % 60 < 50) {
                double off =
                        Angles.difference(track.get(Quantity.RAW_TWD, i), Math.toRadians(4 * Math.sin(time / 110)));
                square += off * off;
                count++;
            }
        }
        return Math.sqrt(square / count);
    }

    @Test
    void onOneTackNothingCanBeTold() {
        BoatTrack track =
                spoiled(new SyntheticTrack(SECONDS, RATE).heading(t -> -45).build(), new Fault(0, 3, 1));
        assertTrue(WindAgreement.of(winds(List.of(track))).get(0).isNone());
    }

    @Test
    void aBoatAtRestSaysNothing() {
        BoatTrack track = new SyntheticTrack(SECONDS, RATE)
                .heading(WindAgreementTest::heading)
                .speed(t -> 0.3)
                .build();
        assertTrue(WindAgreement.of(winds(List.of(track))).get(0).isNone());
    }
}
