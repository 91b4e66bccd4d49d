package trimwright.recording;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import trimwright.ingest.journal.JournalSource.Protocol;

/** A recording in a process of its own, which a test kills. Prints the port that it listens at. */
public final class KilledRecording {
    private KilledRecording() {}

    public static void main(String[] args) throws InterruptedException {
        InputAddress address = InputAddress.of(Protocol.NMEA0183, "Dunlin=tcp-listen://:0", "boat");
        Recording run = Recording.begin(
                new Journals(Path.of(args[0])),
                List.of(address),
                SteadyClock.ofSystem(),
                EventMode.RACING,
                Follower.NONE);
        System.out.println(run.ports().get(0));
        new CountDownLatch(1).await();
    }
}
