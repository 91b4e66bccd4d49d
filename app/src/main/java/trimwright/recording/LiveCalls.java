package trimwright.recording;

import java.time.Instant;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Limits;
import trimwright.call.Around;
import trimwright.call.Call;
import trimwright.call.CallAnswer;
import trimwright.call.CallRules;
import trimwright.call.Caller;
import trimwright.call.Silence;
import trimwright.call.TalkCard;
import trimwright.call.Tone;
import trimwright.call.Tones;
import trimwright.live.LiveFigures;

/** Calls and tones for the trimmer's boat, as the pages get them. One thread. */
public final class LiveCalls {
    /** Whether the event lets anybody be called at. */
    public enum Allowed {
        YES,
        NO
    }

    private final Caller caller = new Caller(CallRules.DEFAULT);
    private final Tones tones;
    private final TalkCard card;
    private final Allowed allowed;
    private final long gunNanos;
    private @Nullable Call last;
    private Silence silence = Silence.SETTLING;
    private Tone tone = Tone.NONE;
    private long number;

    /**
     * @param limits of the trimmer's boat
     * @param gunNanos of the start (ns since 1970 UTC), {@link Long#MIN_VALUE} where it is not known
     */
    public LiveCalls(Limits limits, TalkCard card, Allowed allowed, long gunNanos) {
        tones = new Tones(limits);
        this.card = card;
        this.allowed = allowed;
        this.gunNanos = gunNanos;
    }

    /** Takes the figures of now; the call that is due with them, or null. */
    @Nullable
    Call step(LiveFigures figures, double nearestBoat) {
        tone = tones.of(figures);
        if (allowed == Allowed.NO) {
            silence = Silence.NOT_ALLOWED;
            return null;
        }
        double start = gunNanos == Long.MIN_VALUE ? Double.NaN : (gunNanos - figures.timeNanos()) / 1e9;
        CallAnswer answer = caller.step(figures, tone, new Around(start, Double.NaN, nearestBoat, Double.NaN));
        if (answer == null) {
            return null;
        }
        Call call = answer.call();
        if (call == null) {
            silence = answer.silence() == null ? Silence.NOTHING_TO_SAY : answer.silence();
            return null;
        }
        last = call;
        silence = Silence.RESTING;
        number++;
        return call;
    }

    /** What is said for a call. */
    String say(Call call) {
        return card.say(call);
    }

    void put(Map<String, Object> into) {
        into.put("call.tone", tone.name().toLowerCase(Locale.ROOT));
        into.put("call.silence", silence.name().toLowerCase(Locale.ROOT));
        into.put("call.number", number);
        Call call = last;
        into.put("call.text", call == null ? "" : say(call));
        into.put("call.kind", call == null ? "" : TalkCards.word(call.kind()));
        into.put(
                "call.time_utc",
                call == null
                        ? ""
                        : Instant.ofEpochMilli(call.timeNanos() / 1_000_000).toString());
    }
}
