package trimwright.recording;

import java.io.IOException;
import java.net.DatagramPacket;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.SocketException;
import java.util.HashMap;
import java.util.Map;
import trimwright.ingest.journal.JournalSource;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Packets of whole lines. Each sender is a source of its own, so that their lines never mix. */
final class UdpInput extends Input {
    /** Chosen: more senders than this on one port share a source. */
    private static final int MOST_SENDERS = 64;

    private static final int LARGEST = 65_535;

    /** Chosen: a second of a dozen busy boats, kept by the system while we are behind. */
    private static final int BUFFER = 1 << 20;

    private final DatagramSocket socket;
    private final Map<InetAddress, JournalSource> senders = new HashMap<>();

    private UdpInput(InputAddress address, Arrivals arrivals, DatagramSocket socket) {
        super(address, arrivals);
        this.socket = socket;
    }

    static UdpInput bind(InputAddress address, Arrivals arrivals) {
        try {
            DatagramSocket socket = new DatagramSocket(null);
            socket.setReceiveBufferSize(BUFFER);
            socket.bind(new InetSocketAddress(InetAddress.getByName(hostOf(address)), address.port()));
            return new UdpInput(address, arrivals, socket);
        } catch (IOException e) {
            throw new UserInputException(
                    Texts.of("live.cannot_listen", address.text(), String.valueOf(e.getMessage())), e);
        }
    }

    static String hostOf(InputAddress address) {
        return address.host().isEmpty() ? "127.0.0.1" : address.host();
    }

    @Override
    int port() {
        return socket.getLocalPort();
    }

    @Override
    void run() throws InterruptedException {
        byte[] buffer = new byte[LARGEST];
        DatagramPacket packet = new DatagramPacket(buffer, buffer.length);
        arrivals().changed(address(), InputState.WAITING, "");
        boolean heard = false;
        while (!isClosed()) {
            try {
                packet.setLength(buffer.length);
                socket.receive(packet);
            } catch (SocketException e) {
                return;
            } catch (IOException e) {
                arrivals().changed(address(), InputState.LOST, String.valueOf(e.getMessage()));
                continue;
            }
            if (!heard) {
                heard = true;
                arrivals().changed(address(), InputState.CONNECTED, "");
            }
            arrivals().arrived(sourceOf(packet.getAddress()), buffer, packet.getLength());
        }
    }

    private JournalSource sourceOf(InetAddress sender) {
        JournalSource known = senders.get(sender);
        if (known == null) {
            String name = senders.size() < MOST_SENDERS ? sender.getHostAddress() : "others";
            known = new JournalSource(
                    address().protocol(),
                    JournalSource.Framing.PACKETS,
                    address().boat(),
                    address().text() + " " + name);
            if (senders.size() < MOST_SENDERS) {
                senders.put(sender, known);
            }
        }
        return known;
    }

    @Override
    void closeSockets() {
        socket.close();
    }
}
