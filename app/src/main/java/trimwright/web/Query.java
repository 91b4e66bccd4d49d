package trimwright.web;

import io.javalin.http.Context;
import org.jspecify.annotations.Nullable;
import trimwright.aim.Gustiness;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Reads what a request asks for, in the units it was asked in. */
final class Query {
    private Query() {}

    static String text(Context ctx, String name) {
        String given = ctx.queryParam(name);
        if (given == null || given.isBlank()) {
            throw new UserInputException(Texts.of("web.query.missing", name));
        }
        return given;
    }

    /** A number between the bounds, both included. */
    static double number(Context ctx, String name, double low, double high) {
        return number(text(ctx, name), name, low, high);
    }

    /** The number that was given under a name, between the bounds, both included. */
    static double number(String given, String name, double low, double high) {
        double value = parse(given);
        if (!(value >= low && value <= high)) {
            throw new UserInputException(Texts.of("web.query.number", name, given, plain(low), plain(high)));
        }
        return value;
    }

    /** As {@link #number}; the other value where the request does not name it. */
    static double numberOr(Context ctx, String name, double low, double high, double otherwise) {
        @Nullable String given = ctx.queryParam(name);
        return given == null ? otherwise : number(ctx, name, low, high);
    }

    /** How gusty the day is said to be (-), in per cent in the address; the program's default where nothing is said. */
    static double turbulence(Context ctx) {
        double percent = numberOr(
                ctx,
                "turbulence_percent",
                100 * Gustiness.LEAST_TURBULENCE,
                100 * Gustiness.MOST_TURBULENCE,
                100 * Gustiness.TURBULENCE);
        return percent / 100;
    }

    private static double parse(String given) {
        try {
            return Double.parseDouble(given);
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    private static String plain(double bound) {
        return bound == Math.rint(bound) ? Long.toString((long) bound) : Double.toString(bound);
    }
}
