package trimwright.recording;

import java.io.IOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.journal.JournalSource;
import trimwright.ingest.journal.RecordKind;

/**
 * Keeps every byte before anybody reads it. Inputs hand over bytes on their threads; one thread appends them to the
 * journal, then gives them to the follower, and syncs the file. Memory is bounded: while the recorder is behind the inputs
 * wait, so that a TCP sender is held back and UDP packets wait in the system's buffer.
 */
public final class Recorder implements Arrivals, AutoCloseable {
    /** Chosen: half of the second that may be lost. */
    private static final long SYNC_NANOS = 500_000_000L;

    /** Chosen: time goes on this often for the follower, with or without bytes. */
    private static final long TICK_NANOS = 50_000_000L;

    /** Bytes and pieces that may wait (chosen: seconds of a fleet). */
    private static final int MOST_BYTES = 16 << 20;

    private static final int MOST_PIECES = 16_384;

    /** Of the recorder's own thread. */
    private JournalFile journal;

    private final EventMode mode;
    private final SteadyClock clock;
    private final Follower follower;
    private final BlockingQueue<Item> waiting = new ArrayBlockingQueue<>(MOST_PIECES);
    private final Semaphore room = new Semaphore(MOST_BYTES);
    private final Map<InputAddress, RecorderState.InputInfo> inputs = new LinkedHashMap<>();
    private final Thread thread;
    private volatile RecorderState state = new RecorderState(0, 0, null, List.of());

    /** A source's bytes, or a note where there is no source, or the end where there is no kind either. */
    private record Item(
            @Nullable JournalSource source,
            @Nullable RecordKind kind,
            long nanos,
            byte[] bytes,
            @Nullable Cut cut) {
        Item(@Nullable JournalSource source, @Nullable RecordKind kind, long nanos, byte[] bytes) {
            this(source, kind, nanos, bytes, null);
        }
    }

    /** From here on another journal; done when the one before is closed. */
    private record Cut(JournalFile next, CompletableFuture<@Nullable Void> done) {}

    private Recorder(JournalFile journal, EventMode mode, SteadyClock clock, Follower follower) {
        this.journal = journal;
        this.mode = mode;
        this.clock = clock;
        this.follower = follower;
        thread = new Thread(this::run, "recorder");
    }

    /** Begins to record on an empty disk. */
    static Recorder begin(Disk disk, SteadyClock clock, EventMode mode, Follower follower) throws IOException {
        JournalFile journal = JournalFile.begin(disk);
        journal.say(RecordKind.NOTE, clock.nanos(), Notes.event(mode));
        Recorder recorder = new Recorder(journal, mode, clock, follower);
        recorder.thread.start();
        return recorder;
    }

    @Override
    public void arrived(JournalSource source, byte[] bytes, int length) throws InterruptedException {
        long nanos = clock.nanos();
        if (length > 0) {
            room.acquire(length);
            waiting.put(new Item(source, null, nanos, Arrays.copyOf(bytes, length)));
        }
    }

    @Override
    public void changed(InputAddress input, InputState newState, String reason) throws InterruptedException {
        synchronized (inputs) {
            inputs.put(input, new RecorderState.InputInfo(input, newState, reason));
        }
        waiting.put(new Item(null, RecordKind.NOTE, clock.nanos(), Notes.input(input, newState, reason)));
    }

    /** Marks the last so many seconds. */
    public void mark(double seconds, String text) throws InterruptedException {
        waiting.put(new Item(null, RecordKind.MARK, clock.nanos(), Notes.mark(seconds, text)));
    }

    /**
     * Closes the journal after what has arrived so far, and goes on in another on an empty disk.
     *
     * @throws IOException where the other takes no bytes, then nothing has changed; or the first could not be closed
     */
    void cut(Disk disk) throws IOException, InterruptedException {
        Cut cut = new Cut(JournalFile.begin(disk), new CompletableFuture<>());
        waiting.put(new Item(null, null, clock.nanos(), new byte[0], cut));
        try {
            cut.done().get();
        } catch (ExecutionException e) {
            throw new IOException(e.getCause());
        }
    }

    private void cut(Cut cut, long nanos) {
        JournalFile before = journal;
        journal = cut.next();
        journal.say(RecordKind.NOTE, nanos, Notes.event(mode));
        synchronized (inputs) {
            inputs.values()
                    .forEach(one ->
                            journal.say(RecordKind.NOTE, nanos, Notes.input(one.address(), one.state(), one.reason())));
        }
        try {
            before.close();
            cut.done().complete(null);
        } catch (IOException e) {
            cut.done().completeExceptionally(e);
        }
    }

    /** Keeps a call that was made; only for the follower, on the recorder's own thread. */
    void keepCall(long nanos, byte[] note) {
        journal.say(RecordKind.NOTE, nanos, note);
    }

    /** How the recording stands. */
    public RecorderState state() {
        return state;
    }

    private void run() {
        long synced = clock.nanos();
        long ticked = synced;
        boolean open = true;
        while (open) {
            open = takeOne();
            long now = clock.nanos();
            if (now - synced >= SYNC_NANOS || !open) {
                synced = now;
                long step = clock.takeStep();
                if (step != 0) {
                    journal.say(RecordKind.NOTE, now, Notes.clockSet(step));
                }
                journal.sync();
                tell();
            }
            if (now - ticked >= TICK_NANOS) {
                ticked = now;
                follower.tick(now);
            }
        }
    }

    /** False at the end. */
    private boolean takeOne() {
        Item item;
        try {
            item = waiting.poll(TICK_NANOS, TimeUnit.NANOSECONDS);
        } catch (InterruptedException e) {
            // Nobody interrupts this thread: it ends by the last item, so that nothing before that is lost.
            return true;
        }
        if (item == null) {
            return true;
        }
        Cut cut = item.cut();
        if (cut != null) {
            cut(cut, item.nanos());
            return true;
        }
        if (item.source() != null) {
            journal.data(item.source(), item.nanos(), item.bytes());
            room.release(item.bytes().length);
            follower.take(item.source(), item.nanos(), item.bytes());
        } else if (item.kind() != null) {
            journal.say(item.kind(), item.nanos(), item.bytes());
        }
        return item.source() != null || item.kind() != null;
    }

    private void tell() {
        synchronized (inputs) {
            state = new RecorderState(journal.length(), journal.lost(), journal.fault(), List.copyOf(inputs.values()));
        }
    }

    /** Keeps what still waits, then closes the journal. Inputs must be closed before. */
    @Override
    public void close() throws IOException {
        try {
            waiting.put(new Item(null, null, 0, new byte[0]));
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        journal.close();
    }
}
