package trimwright.start;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Makes the plan of a start from many boats in gusts. The same setup and boats give the same plan. */
public final class StartPlanner {
    /** Shares of her power on which she is held (-): chosen. */
    public static final List<Double> POWERS = List.of(0.0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8);

    /** Seconds to lose that a crew asks for: chosen. */
    public static final List<Double> WANTED = List.of(1.0, 2.0, 4.0);

    /** Speeds closer to each other than this make one column (m/s): chosen. */
    private static final double ALIKE = 1.5;

    /** Lengths for which each way to lose seconds is tried (s): chosen. */
    private static final List<Double> HOLDS = List.of(0.0, 0.5, 1.0, 2.0, 4.0, 7.0, 12.0, 20.0);

    /** Questions that are put to all boats, for who shows progress. */
    public static final int QUESTIONS = POWERS.size() + 2 * 4 + Delay.values().length * HOLDS.size();

    private final StartSetup setup;
    private final Trials trials;

    /** Boats that each get the same question; answers in the order of the boats. */
    public interface Trials {
        <T> List<T> all(Function<StartTrial, T> question);
    }

    public StartPlanner(StartSetup setup, Trials trials) {
        this.setup = setup;
        this.trials = trials;
    }

    public StartPlan plan() {
        List<Held> held = POWERS.stream().map(this::held).toList();
        Held onFoils = slowest(held, Held::isOnFoils);
        Held offFoils = slowest(held, Held::isOffFoils);
        List<StartPlan.Gathering> gathering = new ArrayList<>();
        List<StartPlan.Gathering> other = new ArrayList<>();
        for (Held from : columns(held, onFoils, offFoils)) {
            gathering.add(gathering(from, trials.all(trial -> trial.gathered(from.power()))));
            other.add(gathering(from, trials.all(trial -> trial.fromOtherTack(from.power()))));
        }
        List<StartPlan.Losing> losing = new ArrayList<>();
        for (Delay delay : Delay.values()) {
            losing.addAll(losing(delay));
        }
        return new StartPlan(setup, onFoils, offFoils, gathering, losing, other);
    }

    private Held held(double power) {
        List<Held> runs = trials.all(trial -> trial.held(power));
        return new Held(
                power,
                mean(runs.stream().mapToDouble(Held::speed).toArray()),
                runs.stream().mapToDouble(Held::least).min().orElse(Double.NaN),
                mean(runs.stream().mapToDouble(Held::wet).toArray()),
                mean(runs.stream().mapToDouble(Held::capsized).toArray()));
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    private static @Nullable Held slowest(List<Held> held, Predicate<Held> wanted) {
        return held.stream()
                .filter(wanted)
                .min((a, b) -> Double.compare(a.speed(), b.speed()))
                .orElse(null);
    }

    /** The two slowest, and others that differ from these and from each other. */
    private static List<Held> columns(List<Held> held, @Nullable Held onFoils, @Nullable Held offFoils) {
        List<Held> columns = new ArrayList<>();
        for (Held one : new Held[] {offFoils, onFoils}) {
            if (one != null) {
                columns.add(one);
            }
        }
        for (Held one : held) {
            boolean known = columns.stream().anyMatch(column -> Math.abs(column.speed() - one.speed()) < 2 * ALIKE);
            if (!known && one.capsized() == 0) {
                columns.add(one);
            }
        }
        columns.sort((a, b) -> Double.compare(a.speed(), b.speed()));
        return columns;
    }

    private static StartPlan.Gathering gathering(Held from, List<Gathered> runs) {
        return new StartPlan.Gathering(
                from,
                IntStream.range(0, StartTrial.DISTANCES.size())
                        .mapToObj(i -> Spread.of(runs, run -> run.reached().get(i)))
                        .toList(),
                Spread.of(runs, Gathered::seconds),
                Spread.of(runs, Gathered::metres),
                Spread.of(runs, Gathered::across),
                share(runs, Gathered::touched),
                share(runs, Gathered::capsized));
    }

    /** Each way is tried for some lengths; what lies between two of them is taken as straight. */
    private List<StartPlan.Losing> losing(Delay delay) {
        List<StartPlan.Losing> tried = new ArrayList<>();
        for (double hold : HOLDS) {
            List<Delayed> runs = trials.all(trial -> trial.delayed(delay, hold));
            Spread lost = Spread.of(runs, Delayed::lost);
            tried.add(new StartPlan.Losing(
                    delay,
                    lost.middle(),
                    hold,
                    lost,
                    Spread.of(runs, Delayed::regained),
                    Spread.of(runs, Delayed::least),
                    Spread.of(runs, Delayed::across),
                    share(runs, Delayed::touched),
                    share(runs, Delayed::capsized)));
        }
        List<StartPlan.Losing> losing = new ArrayList<>();
        for (double wanted : WANTED) {
            for (int i = 1; i < tried.size(); i++) {
                StartPlan.Losing low = tried.get(i - 1);
                StartPlan.Losing high = tried.get(i);
                if (low.wanted() <= wanted && high.wanted() > wanted) {
                    losing.add(low.toward(high, wanted));
                    break;
                }
            }
        }
        return losing;
    }

    private static <T> double share(List<T> runs, Predicate<T> which) {
        return (double) runs.stream().filter(which).count() / runs.size();
    }
}
