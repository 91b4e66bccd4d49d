package trimwright.recording;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.journal.JournalSource.Protocol;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/**
 * Where a stream comes from.
 *
 * @param protocol that is spoken
 * @param transport how the bytes come
 * @param host to connect to, or to listen at; empty for the loopback
 * @param port of it
 * @param boat whose data these are
 * @param text as shown: without the boat
 */
public record InputAddress(Protocol protocol, Transport transport, String host, int port, String boat, String text) {
    /** How bytes come. */
    public enum Transport {
        /** Packets sent to us. */
        UDP,
        /** We connect. */
        TCP,
        /** Others connect to us. */
        TCP_LISTEN
    }

    /**
     * Reads {@code [BOAT=]SCHEME://HOST:PORT}.
     *
     * @param otherwise name of the boat where none is given
     * @throws UserInputException where it is no such address
     */
    public static InputAddress of(Protocol protocol, String given, String otherwise) {
        int equals = given.indexOf('=');
        int scheme = given.indexOf("://");
        String boat = equals > 0 && equals < scheme ? given.substring(0, equals) : otherwise;
        String text = equals >= 0 && equals < scheme ? given.substring(equals + 1) : given;
        try {
            URI uri = new URI(text);
            Transport transport = transport(uri.getScheme());
            // A listener may leave its host out, which java.net.URI does not call a host then.
            String authority = uri.getRawAuthority();
            int colon = authority == null ? -1 : authority.lastIndexOf(':');
            if (transport != null && authority != null && colon >= 0 && !boat.isBlank()) {
                int port = Integer.parseInt(authority.substring(colon + 1));
                String host = authority.substring(0, colon).replaceAll("^\\[|]$", "");
                boolean needsHost = transport == Transport.TCP;
                boolean speaks = protocol == Protocol.NMEA0183 || transport == Transport.TCP;
                if (port >= 0 && port <= 65_535 && speaks && !(needsHost && (host.isEmpty() || port == 0))) {
                    return new InputAddress(protocol, transport, host, port, boat, text);
                }
            }
        } catch (URISyntaxException | NumberFormatException e) {
            throw new UserInputException(fault(protocol, given), e);
        }
        throw new UserInputException(fault(protocol, given));
    }

    private static @Nullable Transport transport(@Nullable String scheme) {
        return switch (String.valueOf(scheme).toLowerCase(Locale.ROOT)) {
            case "udp" -> Transport.UDP;
            case "tcp" -> Transport.TCP;
            case "tcp-listen" -> Transport.TCP_LISTEN;
            default -> null;
        };
    }

    private static String fault(Protocol protocol, String given) {
        return Texts.of(protocol == Protocol.SIGNALK ? "live.bad_signalk" : "live.bad_nmea", given);
    }
}
