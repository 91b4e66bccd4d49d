package trimwright.setup;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * What a forecast lets expect of one setup: means over the winds that it makes likely. All of it is about those winds for which
 * there is an answer; {@link #answeredShare} says how likely they are.
 *
 * @param winds the race in each wind looked at, rising
 */
public record RaceOutlook(List<WindOutlook> winds) {
    /** Between these shares of the forecast's winds lies the interval of time (-); chosen: nine races in ten. */
    public static final double LOW = 0.05;

    public static final double HIGH = 0.95;

    /** A chance is told only if it is known in so much of the winds with a time (-); chosen. */
    static final double KNOWN = 0.95;

    public RaceOutlook {
        winds = List.copyOf(winds);
    }

    /** How likely the winds with an answer are (-). */
    public double answeredShare() {
        return winds.stream()
                .filter(WindOutlook::isAnswered)
                .mapToDouble(WindOutlook::weight)
                .sum();
    }

    /** Expected time (s); NaN without any answer. */
    public double time() {
        return mean(winds.stream().filter(WindOutlook::isAnswered).toList(), WindOutlook::time);
    }

    /** Time that a share of races stays below (s), from the forecast's spread of wind alone; NaN without any answer. */
    public double timeBelow(double share) {
        List<WindOutlook> rising = winds.stream()
                .filter(WindOutlook::isAnswered)
                .sorted(Comparator.comparingDouble(WindOutlook::time))
                .toList();
        double all = answeredShare();
        double under = 0;
        double before = Double.NaN;
        double place = 0;
        for (WindOutlook one : rising) {
            double middle = (under + one.weight() / 2) / all;
            if (middle >= share) {
                double part = Double.isNaN(before) ? 1 : (share - place) / (middle - place);
                return Double.isNaN(before) ? one.time() : before + part * (one.time() - before);
            }
            under += one.weight();
            before = one.time();
            place = middle;
        }
        return before;
    }

    /** Expected time on the foils over expected time (-). */
    public double foilingShare() {
        List<WindOutlook> answered =
                winds.stream().filter(WindOutlook::isAnswered).toList();
        return mean(answered, one -> one.time() * one.foilingShare()) / time();
    }

    /** Chance that in the race a gust passes each limit (-), where it is known; NaN where that is less than {@link #KNOWN}. */
    public Map<GustLimit, Double> overLimit() {
        Map<GustLimit, Double> chances = new EnumMap<>(GustLimit.class);
        for (GustLimit limit : GustLimit.values()) {
            List<WindOutlook> known = winds.stream()
                    .filter(WindOutlook::isAnswered)
                    .filter(one -> !Double.isNaN(one.overLimit(limit)))
                    .toList();
            double share = known.stream().mapToDouble(WindOutlook::weight).sum();
            chances.put(
                    limit, share >= KNOWN * answeredShare() ? mean(known, one -> one.overLimit(limit)) : Double.NaN);
        }
        return chances;
    }

    static double mean(List<WindOutlook> winds, ToDoubleFunction<WindOutlook> value) {
        double all = 0;
        double sum = 0;
        for (WindOutlook one : winds) {
            all += one.weight();
            sum += one.weight() * value.applyAsDouble(one);
        }
        return sum / all;
    }
}
