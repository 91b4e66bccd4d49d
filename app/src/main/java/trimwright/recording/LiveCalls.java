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
    private final LiveMarks marks;
    private @Nullable Call last;
    private String said = "";
    private Silence silence = Silence.SETTLING;
    private Tone tone = Tone.NONE;
    private long number;

    /**
     * @param limits of the trimmer's boat
     * @param gunNanos of the start (ns since 1970 UTC), {@link Long#MIN_VALUE} where it is not known
     */
    public LiveCalls(Limits limits, TalkCard card, Allowed allowed, long gunNanos) {
        this(limits, card, allowed, gunNanos, LiveMarks.NONE);
    }

    /**
     * As above, with what the crew reads: then calls are said in marks.
     *
     * @param marks of the trimmer's boat
     */
    public LiveCalls(Limits limits, TalkCard card, Allowed allowed, long gunNanos, LiveMarks marks) {
        this.marks = marks;
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
        String amount = marks.amount(call, figures.wind().tack());
        said = amount == null ? card.say(call) : card.say(call, amount);
        silence = Silence.RESTING;
        number++;
        return call;
    }

    /** What was said for the last call; empty before the first. */
    String said() {
        return said;
    }

    /** Adds what the crew reads at these figures. */
    void putMarks(String boat, LiveFigures figures, Map<String, Object> into) {
        marks.put(boat, figures, into);
    }

    void put(Map<String, Object> into) {
        into.put("call.tone", tone.name().toLowerCase(Locale.ROOT));
        into.put("call.silence", silence.name().toLowerCase(Locale.ROOT));
        into.put("call.number", number);
        Call call = last;
        into.put("call.text", said);
        into.put("call.kind", call == null ? "" : TalkCards.word(call.kind()));
        into.put(
                "call.time_utc",
                call == null
                        ? ""
                        : Instant.ofEpochMilli(call.timeNanos() / 1_000_000).toString());
    }
}
