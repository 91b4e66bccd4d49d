package trimwright.setup;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * {@link AimedSailing} of one leg over the winds of a book.
 *
 * @param winds the book's (m/s), rising
 * @param sailing one a wind
 */
public record AimedLeg(List<Double> winds, List<AimedSailing> sailing) {
    public AimedLeg {
        winds = List.copyOf(winds);
        sailing = List.copyOf(sailing);
        if (winds.isEmpty() || winds.size() != sailing.size()) {
            throw new IllegalArgumentException(sailing.size() + " ways of sailing for " + winds.size() + " winds");
        }
    }

    /** How often a gust passes a limit in any wind (1/s): between two winds on a line; NaN where not known. */
    public double rate(GustLimit limit, double wind) {
        return at(one -> one.rate(limit), wind);
    }

    /** Speed at the aim over that at the target in any wind (-), likewise; NaN where not known. */
    public double speedShare(double wind) {
        return at(AimedSailing::speedShare, wind);
    }

    private double at(ToDoubleFunction<AimedSailing> value, double wind) {
        int i = 0;
        while (i < winds.size() - 2 && wind >= winds.get(i + 1)) {
            i++;
        }
        int next = Math.min(i + 1, winds.size() - 1);
        double low = value.applyAsDouble(sailing.get(i));
        double high = value.applyAsDouble(sailing.get(next));
        double width = winds.get(next) - winds.get(i);
        double part = width == 0 ? 0 : Math.max(0, Math.min(1, (wind - winds.get(i)) / width));
        return part == 0 ? low : part == 1 ? high : low + part * (high - low);
    }
}
