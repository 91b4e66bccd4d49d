package trimwright.recording;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;

/** One stream on a thread of its own. It ends when it is closed and not before. */
abstract class Input implements AutoCloseable {
    private final InputAddress address;
    private final Arrivals arrivals;
    private final Thread thread;
    private volatile boolean closed;

    Input(InputAddress address, Arrivals arrivals) {
        this.address = address;
        this.arrivals = arrivals;
        thread = new Thread(this::runToEnd, "input " + address.text());
        thread.setDaemon(true);
    }

    /** Opens what must be open from the start; a fault of the address is said before anything is recorded. */
    static Input open(InputAddress address, Arrivals arrivals) {
        Input input = switch (address.transport()) {
            case UDP -> UdpInput.bind(address, arrivals);
            case TCP -> new TcpInput(address, arrivals);
            case TCP_LISTEN -> TcpListener.bind(address, arrivals);
        };
        input.thread.start();
        return input;
    }

    InputAddress address() {
        return address;
    }

    Arrivals arrivals() {
        return arrivals;
    }

    boolean isClosed() {
        return closed;
    }

    private void runToEnd() {
        try {
            run();
        } catch (InterruptedException e) {
            // Only close() interrupts; the thread is at its end.
            Thread.currentThread().interrupt();
        }
    }

    /** The port that it listens at; 0 for one that connects. */
    abstract int port();

    abstract void run() throws InterruptedException;

    /** Closes what the thread waits for. */
    abstract void closeSockets();

    @Override
    public void close() {
        closed = true;
        closeSockets();
        thread.interrupt();
    }

    static void closeQuietly(Closeable socket) {
        try {
            socket.close();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot close a socket", e);
        }
    }
}
