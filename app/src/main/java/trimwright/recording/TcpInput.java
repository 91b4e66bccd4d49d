package trimwright.recording;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.journal.JournalSource;

/** A stream that we connect to; tried again and again where it is not there or breaks off. */
final class TcpInput extends Input {
    private static final int CONNECT_MILLIS = 3_000;

    /** A Signal K server sends nothing over TCP before it is asked (Signal K specification 1.8, key signalk). */
    private static final String SUBSCRIPTION = "{\"context\":\"vessels.self\",\"subscribe\":[{\"path\":\"*\"}]}\r\n";

    private final BackOff backOff = new BackOff();
    private volatile @Nullable Socket open;

    TcpInput(InputAddress address, Arrivals arrivals) {
        super(address, arrivals);
    }

    @Override
    int port() {
        return 0;
    }

    @Override
    void run() throws InterruptedException {
        JournalSource source = new JournalSource(
                address().protocol(),
                JournalSource.Framing.STREAM,
                address().boat(),
                address().text());
        while (!isClosed()) {
            String reason = once(source);
            if (!isClosed()) {
                arrivals().changed(address(), InputState.LOST, reason);
                Thread.sleep(backOff.nextMillis());
            }
        }
    }

    private String once(JournalSource source) throws InterruptedException {
        try (Socket socket = new Socket()) {
            open = socket;
            socket.connect(new InetSocketAddress(address().host(), address().port()), CONNECT_MILLIS);
            if (address().protocol() == JournalSource.Protocol.SIGNALK) {
                socket.getOutputStream().write(SUBSCRIPTION.getBytes(StandardCharsets.US_ASCII));
            }
            arrivals().changed(address(), InputState.CONNECTED, "");
            return SocketReading.toEnd(socket, source, resetting(), SocketReading.SILENCE_MILLIS);
        } catch (IOException e) {
            return String.valueOf(e.getMessage());
        }
    }

    /** Only bytes show that a connection works: one that is taken and dropped at once must not be tried in a rush. */
    private Arrivals resetting() {
        return new Arrivals() {
            @Override
            public void arrived(JournalSource source, byte[] bytes, int length) throws InterruptedException {
                backOff.worked();
                arrivals().arrived(source, bytes, length);
            }

            @Override
            public void changed(InputAddress input, InputState state, String reason) throws InterruptedException {
                arrivals().changed(input, state, reason);
            }
        };
    }

    @Override
    void closeSockets() {
        Socket socket = open;
        if (socket != null) {
            closeQuietly(socket);
        }
    }
}
