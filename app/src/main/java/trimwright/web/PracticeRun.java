package trimwright.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.websocket.WsContext;
import java.util.Set;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.jetty.websocket.api.Callback;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import trimwright.boatfile.BoatFile;
import trimwright.drills.CuedDrill;
import trimwright.drills.DrillDocument;
import trimwright.drills.DrillFrame;
import trimwright.practice.DrillMoment;
import trimwright.practice.DrillRun;
import trimwright.practice.DrillSetup;
import trimwright.practice.HandInput;
import trimwright.practice.PersonsHand;
import trimwright.practice.WingPart;
import trimwright.text.JsonOut;

/**
 * A drill sailed at the pace of the clock by the person at a page. What the hands do acts from the next step, which is the
 * one that the log names. A page that cannot keep up gets the newest frame and misses others.
 */
final class PracticeRun {
    private static final Logger LOG = LoggerFactory.getLogger(PracticeRun.class);

    /** Between two frames (ms): chosen, the page draws between them. */
    private static final long FRAME_MILLIS = 33;

    /** Of the computed hand's time to settle her this much is shown (s): chosen, to see what comes. */
    private static final double SHOWN = 4;

    /** The boat stops rather than leaps where the machine was busy for longer (s): chosen. */
    private static final double LONGEST_LEAP = 0.25;

    private final BoatFile file;
    private final DrillSetup setup;
    private final PersonsHand hand;
    private final DrillRun run;
    private final @Nullable CuedDrill cued;
    private final WsContext page;
    private final ScheduledExecutorService clock;
    private final AtomicBoolean sending = new AtomicBoolean();
    private volatile HandInput input = HandInput.NONE;
    private volatile boolean paused;
    private @Nullable ScheduledFuture<?> ticking;
    private double sailed;
    private double owed;
    private long last;

    /** @param cued along a kept plan, null without one */
    PracticeRun(
            BoatFile file,
            DrillSetup setup,
            Set<WingPart> mine,
            @Nullable CuedDrill cued,
            WsContext page,
            ScheduledExecutorService clock) {
        this.cued = cued;
        this.file = file;
        this.setup = setup;
        this.page = page;
        this.clock = clock;
        hand = new PersonsHand(setup.wing(), mine, 1);
        run = cued == null ? new DrillRun(setup, hand) : cued.run(hand);
    }

    synchronized void start() {
        while (sailed < DrillRun.SETTLING - SHOWN) {
            run.step();
            sailed += DrillRun.STEP;
        }
        last = System.nanoTime();
        ticking = clock.scheduleAtFixedRate(this::tick, FRAME_MILLIS, FRAME_MILLIS, TimeUnit.MILLISECONDS);
    }

    synchronized void stop() {
        if (ticking != null) {
            ticking.cancel(false);
        }
    }

    /** Takes what the page says of the hands; false where that is not understood. */
    boolean hear(String message) {
        try {
            JsonNode said = JsonOut.mapper().readTree(message);
            if (said.path("pause").isBoolean()) {
                paused = said.path("pause").asBoolean();
                return true;
            }
            input = new HandInput(
                    said.path("sheet").asDouble(Double.NaN),
                    said.path("camber").asDouble(Double.NaN),
                    said.path("twist").asDouble(Double.NaN),
                    said.path("inversions").asInt(-1));
            return true;
        } catch (JsonProcessingException | IllegalArgumentException e) {
            return false;
        }
    }

    private synchronized void tick() {
        try {
            long now = System.nanoTime();
            double passed = (now - last) * 1e-9;
            last = now;
            if (paused) {
                return;
            }
            owed = Math.min(LONGEST_LEAP, owed + passed);
            DrillMoment moment = null;
            while (owed >= DrillRun.STEP && !run.isOver()) {
                owed -= DrillRun.STEP;
                hand.put(input);
                moment = run.step();
                if (cued != null) {
                    cued.see(moment);
                }
            }
            if (moment != null) {
                send(moment);
            }
            if (run.isOver()) {
                stop();
                finish();
            }
        } catch (RuntimeException e) {
            LOG.error("practice", e);
            stop();
            page.closeSession();
        }
    }

    private void send(DrillMoment moment) {
        if (!page.session.isOpen() || !sending.compareAndSet(false, true)) {
            return;
        }
        ObjectNode frame = DrillFrame.of(moment, setup.wing(), hand.side());
        if (cued != null) {
            frame.put("cue", cued.next());
        }
        page.session.sendText(text(frame), Callback.from(() -> sending.set(false), failure -> sending.set(false)));
    }

    private void finish() {
        ObjectNode message = JsonOut.mapper().createObjectNode();
        ObjectNode result = DrillDocument.of(file, setup, "you", run.result());
        if (cued != null) {
            cued.put(result);
        }
        message.set("result", result);
        if (page.session.isOpen()) {
            page.session.sendText(text(message), Callback.from(page::closeSession, failure -> page.closeSession()));
        }
    }

    private static String text(ObjectNode node) {
        try {
            return JsonOut.mapper().writeValueAsString(node);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("not writable as JSON", e);
        }
    }
}
