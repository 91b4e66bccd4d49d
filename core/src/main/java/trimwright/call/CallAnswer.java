package trimwright.call;

import org.jspecify.annotations.Nullable;

/**
 * A call that is due now, or why there is none.
 *
 * @param call null in silence
 * @param silence null with a call
 */
public record CallAnswer(@Nullable Call call, @Nullable Silence silence) {
    static CallAnswer of(Call call) {
        return new CallAnswer(call, null);
    }

    static CallAnswer of(Silence silence) {
        return new CallAnswer(null, silence);
    }
}
