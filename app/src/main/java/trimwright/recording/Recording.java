package trimwright.recording;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** A recording from its start to its closing into the library, race by race if it is cut. */
public final class Recording {
    private final Journals journals;
    private final SteadyClock clock;
    private Path file;
    private final Recorder recorder;
    private final List<Input> inputs;

    private Recording(Journals journals, SteadyClock clock, Path file, Recorder recorder, List<Input> inputs) {
        this.journals = journals;
        this.clock = clock;
        this.file = file;
        this.recorder = recorder;
        this.inputs = List.copyOf(inputs);
    }

    /**
     * Begins to record.
     *
     * @throws UserInputException where an address cannot be listened at, or the library's folder takes no file
     */
    public static Recording begin(
            Journals journals, List<InputAddress> addresses, SteadyClock clock, EventMode mode, Follower follower) {
        Path file = journals.fresh(Instant.ofEpochSecond(0, clock.nanos()));
        Recorder recorder;
        try {
            recorder = Recorder.begin(empty(file), clock, mode, follower);
        } catch (IOException e) {
            throw new UserInputException(Texts.of("live.cannot_record", file, String.valueOf(e.getMessage())), e);
        }
        Recording run = new Recording(journals, clock, file, recorder, List.of());
        List<Input> inputs = new ArrayList<>();
        try {
            for (InputAddress address : addresses) {
                inputs.add(Input.open(address, recorder));
            }
        } catch (UserInputException e) {
            inputs.forEach(Input::close);
            run.close();
            throw e;
        }
        return new Recording(journals, clock, file, recorder, inputs);
    }

    private static Disk empty(Path file) throws IOException {
        Disk disk = Disk.lock(file);
        if (disk == null) {
            throw new UserInputException(Texts.of("live.cannot_record", file, Texts.of("live.locked")));
        }
        return disk;
    }

    /**
     * A race is over: what came so far becomes a session of the library, and recording goes on in a journal of its own; null where
     * nothing had come.
     *
     * @throws UserInputException where the library's folder takes no file; recording goes on as before
     */
    public synchronized Journals.@Nullable Closed cut() throws InterruptedException {
        Path over = file;
        Path next = journals.fresh(Instant.ofEpochSecond(0, clock.nanos()));
        try {
            recorder.cut(empty(next));
            file = next;
        } catch (IOException e) {
            throw new UserInputException(Texts.of("live.cannot_record", next, String.valueOf(e.getMessage())), e);
        }
        return journals.close(over);
    }

    public Recorder recorder() {
        return recorder;
    }

    /** Ports that the inputs listen at, 0 for those that connect, in the order given. */
    public List<Integer> ports() {
        return inputs.stream().map(Input::port).toList();
    }

    /** Stops, and closes the journal into the library; null where nothing came. */
    public synchronized Journals.@Nullable Closed close() {
        inputs.forEach(Input::close);
        try {
            recorder.close();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot close " + file + ": " + e.getMessage(), e);
        }
        return journals.close(file);
    }
}
