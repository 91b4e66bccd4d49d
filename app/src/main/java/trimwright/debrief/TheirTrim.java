package trimwright.debrief;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import trimwright.fleet.Difference;
import trimwright.fleet.FleetFindings;
import trimwright.fleet.Question;
import trimwright.platform.Balance;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.segment.Phase;
import trimwright.segment.PointOfSail;
import trimwright.target.TargetBook;
import trimwright.target.TargetFinder;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * Another boat's trim in a boat as described: what the model says that the difference makes good, beside what the data say. The controls
 * in which she stood out are held at the mean of the others and at hers; everything else is set as well as can be for each.
 *
 * @param boat whose trim
 * @param on point of sail
 * @param with questions whose controls were held, in their order
 * @param made good with her trim less with the others' (m/s)
 */
public record TheirTrim(String boat, PointOfSail on, List<Question> with, double made) {
    /** What the model can hold; load and incidence of the wing follow from these and from the moment that is carried. */
    private static final Map<Question, Variable> HELD = new EnumMap<>(Map.of(
            Question.CAMBER, Variable.CAMBER,
            Question.TWIST, Variable.TWIST,
            Question.HEEL, Variable.HEEL,
            Question.RIDE_HEIGHT, Variable.RIDE_HEIGHT));

    /** One for each boat and point of sail whose trim is told to differ; none where the model has no answer. */
    static List<TheirTrim> of(FleetFindings fleet, List<BoatDebrief> boats, Platform platform, TargetBook book) {
        return fleet.toldTogether().parallelStream()
                .map(together -> together.stream()
                        .filter(one -> HELD.containsKey(one.question()))
                        .sorted(Comparator.comparing(Difference::question))
                        .toList())
                .filter(told -> !told.isEmpty())
                .map(told -> of(told, boats, platform, book))
                .filter(Objects::nonNull)
                .toList();
    }

    private static @Nullable TheirTrim of(
            List<Difference> told, List<BoatDebrief> boats, Platform platform, TargetBook book) {
        Difference first = told.get(0);
        double wind = wind(first);
        TargetMode mode = first.on() == PointOfSail.UPWIND ? TargetMode.UPWIND : TargetMode.DOWNWIND;
        TargetPoint near = first.on() == PointOfSail.UPWIND
                ? book.findUpwind(wind).point()
                : book.findDownwind(wind).point();
        if (near == null || first.on() == PointOfSail.REACHING) {
            return null;
        }
        Map<Variable, Double> theirs = new EnumMap<>(Variable.class);
        Map<Variable, Double> hers = new EnumMap<>(Variable.class);
        for (Difference one : told) {
            double mean = meanOfOthers(one, boats);
            Variable held = HELD.get(one.question());
            if (held == null || Double.isNaN(mean)) {
                return null;
            }
            theirs.put(held, mean);
            hers.put(held, mean + one.value());
        }
        TargetFinder finder = new TargetFinder(platform, Map.of());
        Balance with = finder.bestOf(mode, near.branch(), wind, near.state(), hers);
        Balance without = finder.bestOf(mode, near.branch(), wind, near.state(), theirs);
        return with == null || without == null
                ? null
                : new TheirTrim(
                        first.boat(),
                        first.on(),
                        told.stream().map(Difference::question).toList(),
                        along(with.state()) - along(without.state()));
    }

    private static double wind(Difference one) {
        Double low = one.evidence().lowWind();
        Double high = one.evidence().highWind();
        return low == null || high == null ? Double.NaN : 0.5 * (low + high);
    }

    private static double along(SailingState state) {
        return Math.abs(state.get(Variable.BOAT_SPEED) * StrictMath.cos(state.get(Variable.TRUE_WIND_ANGLE)));
    }

    /** Over their steady phases on that point of sail, each boat for as long as she sailed, free of the tack. */
    private static double meanOfOthers(Difference one, List<BoatDebrief> boats) {
        Quantity quantity = quantity(one.question());
        double sum = 0;
        double weight = 0;
        for (BoatDebrief boat : boats) {
            WindTrack track = boat.wind();
            if (boat.boat().equals(one.boat()) || !track.has(quantity)) {
                continue;
            }
            for (Phase phase : boat.pieces().phases()) {
                if (phase.kind() == one.on()) {
                    double mean = track.mean(
                            quantity, phase.span().from(), phase.span().to());
                    double side = one.question() == Question.RIDE_HEIGHT
                            ? 1
                            : phase.tack().sign();
                    if (!Double.isNaN(mean)) {
                        sum += phase.span().length() * mean * side;
                        weight += phase.span().length();
                    }
                }
            }
        }
        return weight == 0 ? Double.NaN : sum / weight;
    }

    private static Quantity quantity(Question question) {
        return switch (question) {
            case CAMBER -> Quantity.CAMBER;
            case TWIST -> Quantity.TWIST;
            case HEEL -> Quantity.ROLL;
            case RIDE_HEIGHT -> Quantity.RIDE_HEIGHT;
            default -> throw new IllegalArgumentException("not held: " + question);
        };
    }
}
