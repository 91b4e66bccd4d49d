package trimwright.recording;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import trimwright.ingest.journal.JournalSource;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Streams that others send by connecting to us, each a source of its own. */
final class TcpListener extends Input {
    /** Chosen: the next one is turned away. */
    private static final int MOST = 64;

    private final ServerSocket server;
    private final Set<Socket> connections = ConcurrentHashMap.newKeySet();
    private final Set<String> names = ConcurrentHashMap.newKeySet();

    private TcpListener(InputAddress address, Arrivals arrivals, ServerSocket server) {
        super(address, arrivals);
        this.server = server;
    }

    static TcpListener bind(InputAddress address, Arrivals arrivals) {
        try {
            InetAddress at = InetAddress.getByName(UdpInput.hostOf(address));
            return new TcpListener(address, arrivals, new ServerSocket(address.port(), MOST, at));
        } catch (IOException e) {
            throw new UserInputException(
                    Texts.of("live.cannot_listen", address.text(), String.valueOf(e.getMessage())), e);
        }
    }

    @Override
    int port() {
        return server.getLocalPort();
    }

    @Override
    void run() throws InterruptedException {
        arrivals().changed(address(), InputState.WAITING, "");
        while (!isClosed()) {
            try {
                Socket socket = server.accept();
                if (connections.size() < MOST) {
                    begin(socket);
                } else {
                    socket.close();
                }
            } catch (IOException e) {
                if (!isClosed()) {
                    arrivals().changed(address(), InputState.LOST, String.valueOf(e.getMessage()));
                }
            }
        }
    }

    private void begin(Socket socket) {
        connections.add(socket);
        Thread reader = new Thread(() -> read(socket), "input " + address().text());
        reader.setDaemon(true);
        reader.start();
    }

    /** The sender's port is left out: after a break it comes back from another, and is the same sender. */
    private String take(String sender) {
        String name = sender;
        for (int n = 2; !names.add(name); n++) {
            name = sender + " #" + n;
        }
        return name;
    }

    private void read(Socket socket) {
        String name = take(address().text() + " " + socket.getInetAddress().getHostAddress());
        JournalSource source = new JournalSource(
                address().protocol(), JournalSource.Framing.STREAM, address().boat(), name);
        try (socket) {
            arrivals().changed(address(), InputState.CONNECTED, "");
            String reason = SocketReading.toEnd(socket, source, arrivals(), SocketReading.SILENCE_MILLIS);
            connections.remove(socket);
            if (!isClosed()) {
                arrivals().changed(address(), connections.isEmpty() ? InputState.LOST : InputState.CONNECTED, reason);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (IOException e) {
            // Closing failed: there is nothing left to read from it.
            return;
        } finally {
            connections.remove(socket);
            names.remove(name);
        }
    }

    @Override
    void closeSockets() {
        closeQuietly(server);
        connections.forEach(Input::closeQuietly);
    }
}
