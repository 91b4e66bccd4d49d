package trimwright.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.RealMatrix;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.dock.DockOffset;
import trimwright.units.Angles;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * Solves for what the instruments of a session's boats read wrongly: all unknowns of all boats together, from blocks of
 * straight sailing, in one wind that walks. What two unknowns share stays in the errors of both, so that an estimate that is
 * told stands whatever the others are. Left out: lag of the vane, upwash of hull and crew, a current that changes.
 */
public final class Calibrations {
    /** Fewest blocks of straight sailing, and fewest on either tack (chosen: two minutes, one minute). */
    private static final int FEWEST = 6;

    private static final int FEWEST_ON_A_TACK = 3;

    /** Standard errors are enlarged by this (-), chosen: noise and its dependence are found from the same day. */
    private static final double LARGER = 1.1;

    private Calibrations() {}

    /**
     * One boat of a session.
     *
     * @param track as logged, nothing taken off
     * @param boat description, null where there is none
     * @param wing that she carries, null without a description
     * @param dock what a dock check says beforehand, maybe nothing
     */
    public record Given(
            WindTrack track, @Nullable Boat boat, @Nullable WingSpec wing, List<DockOffset> dock) {
        public Given {
            dock = List.copyOf(dock);
        }
    }

    /** One answer a boat, in their order; all tracks are on one clock. */
    public static List<Calibration> of(List<Given> given) {
        List<Calibration.@Nullable Refused> refused = new ArrayList<>();
        List<BoatModel> usable = new ArrayList<>();
        for (Given one : given) {
            List<Block> blocks = Block.of(one.track());
            Calibration.Refused refusal = refusal(one.track(), blocks);
            refused.add(refusal);
            if (refusal == null) {
                usable.add(model(one, blocks));
            }
        }
        List<Fit.Solved> solved = usable.isEmpty() ? List.of() : Fit.of(usable);
        List<Calibration> answers = new ArrayList<>();
        int at = 0;
        for (int i = 0; i < given.size(); i++) {
            Calibration.Refused refusal = refused.get(i);
            if (refusal == null) {
                answers.add(found(given.get(i).track().boat(), usable.get(at), solved.get(at)));
                at++;
            } else {
                answers.add(refusal);
            }
        }
        return answers;
    }

    private static BoatModel model(Given given, List<Block> blocks) {
        Boat boat = given.boat();
        WingSpec wing = given.wing();
        UpwashBasis basis =
                boat == null || wing == null ? ModelUpwash.byWind(blocks) : ModelUpwash.of(blocks, boat, wing);
        return new BoatModel(blocks, basis, boat != null && boat.windSensor().turnsWithWing(), given.dock());
    }

    private static Calibration.@Nullable Refused refusal(WindTrack track, List<Block> blocks) {
        double port =
                Block.LENGTH * blocks.stream().filter(b -> b.felt().side() < 0).count();
        double starboard = Block.LENGTH * blocks.size() - port;
        boolean logged = track.has(Quantity.AWA) && track.has(Quantity.AWS) && track.has(Quantity.HEADING);
        Calibration.Reason reason = !logged || !track.has(Quantity.SPEED)
                ? Calibration.Reason.NOT_LOGGED
                : blocks.size() < FEWEST
                        ? Calibration.Reason.TOO_SHORT
                        : Math.min(port, starboard) < FEWEST_ON_A_TACK * Block.LENGTH
                                ? Calibration.Reason.ONE_TACK
                                : null;
        return reason == null ? null : new Calibration.Refused(track.boat(), reason, port, starboard);
    }

    private static Calibration.Found found(String boat, BoatModel model, Fit.Solved solved) {
        List<Unknown> spoken =
                Arrays.stream(Unknown.values()).filter(model::speaksOf).toList();
        int[] of = spoken.stream().mapToInt(Enum::ordinal).toArray();
        RealMatrix covariance = solved.covariance().getSubMatrix(of, of).scalarMultiply(LARGER * LARGER);
        List<Combination> together = Combination.of(spoken, covariance, model.has(BoatModel.Kind.ACROSS));
        List<Estimate> estimates = new ArrayList<>();
        for (int k = 0; k < of.length; k++) {
            Unknown unknown = spoken.get(k);
            double error = Math.sqrt(covariance.getEntry(k, k));
            boolean shared = together.stream().anyMatch(one -> one.unknowns().contains(unknown));
            Estimate.Verdict verdict = error <= unknown.sure()
                    ? Estimate.Verdict.TOLD
                    : shared ? Estimate.Verdict.TOGETHER : Estimate.Verdict.TOO_LITTLE;
            estimates.add(new Estimate(unknown, solved.values()[of[k]], error, verdict));
        }
        return new Calibration.Found(
                boat,
                estimates,
                ties(estimates, covariance, model.has(BoatModel.Kind.ACROSS)),
                together,
                model.basis,
                model.leeway,
                winds(model, solved));
    }

    private static List<Tie> ties(List<Estimate> estimates, RealMatrix covariance, boolean hasCourse) {
        List<Tie> ties = new ArrayList<>();
        for (int i = 0; i < estimates.size(); i++) {
            for (int j = i + 1; j < estimates.size(); j++) {
                Estimate one = estimates.get(i);
                Estimate other = estimates.get(j);
                double correlation = covariance.getEntry(i, j) / (one.standardError() * other.standardError());
                if (Math.abs(correlation) >= Tie.NAMED) {
                    List<Unknown> both = List.of(one.unknown(), other.unknown());
                    ties.add(new Tie(
                            one.unknown(),
                            other.unknown(),
                            correlation,
                            one.isTold() && other.isTold(),
                            Tie.remedy(both, hasCourse)));
                }
            }
        }
        ties.sort(Comparator.comparingDouble((Tie tie) -> -Math.abs(tie.correlation())));
        return ties;
    }

    private static List<BlockWind> winds(BoatModel model, Fit.Solved solved) {
        double[] none = new double[BoatModel.SIZE];
        return IntStream.range(0, model.blocks.size())
                .mapToObj(i -> {
                    Block block = model.blocks.get(i);
                    return new BlockWind(
                            block.time(),
                            block.felt().side(),
                            block.upwind(),
                            wind(model.wind(block, none)),
                            wind(model.wind(block, solved.values())));
                })
                .toList();
    }

    private static BlockWind.Wind wind(double[] components) {
        return new BlockWind.Wind(
                StrictMath.hypot(components[0], components[1]),
                Angles.compass(StrictMath.atan2(components[1], components[0])));
    }
}
