package trimwright.recording;

import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.SocketTimeoutException;
import trimwright.ingest.journal.JournalSource;
import trimwright.text.Texts;

/** Reads one connection to its end. */
final class SocketReading {
    /** Chosen: instruments send every second; a pulled cable ends no connection by itself. */
    static final int SILENCE_MILLIS = 10_000;

    private static final int PIECE = 1 << 13;

    private SocketReading() {}

    /** Gives why the connection ended. */
    static String toEnd(Socket socket, JournalSource source, Arrivals arrivals, int silenceMillis)
            throws InterruptedException {
        try {
            socket.setSoTimeout(silenceMillis);
            socket.setKeepAlive(true);
            InputStream in = socket.getInputStream();
            byte[] buffer = new byte[PIECE];
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                arrivals.arrived(source, buffer, n);
            }
            return Texts.of("live.input.ended");
        } catch (SocketTimeoutException e) {
            return Texts.of("live.input.silent", silenceMillis / 1000);
        } catch (IOException e) {
            return String.valueOf(e.getMessage());
        }
    }
}
