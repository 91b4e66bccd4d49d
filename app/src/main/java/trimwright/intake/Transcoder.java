package trimwright.intake;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** Turns text of another encoding into UTF-8, piece by piece; bytes that do not fit become the replacement character. */
final class Transcoder {
    /** Takes the bytes of UTF-8. */
    interface Taker {
        void take(byte[] bytes, int length);
    }

    private final CharsetDecoder decoder;
    private final Taker taker;
    private final CharBuffer chars = CharBuffer.allocate(1 << 15);
    private ByteBuffer rest = ByteBuffer.allocate(0);

    Transcoder(Charset charset, Taker taker) {
        decoder = charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPLACE)
                .onUnmappableCharacter(CodingErrorAction.REPLACE);
        this.taker = taker;
    }

    void take(byte[] bytes, int length) throws IOException {
        ByteBuffer in = ByteBuffer.allocate(rest.remaining() + length);
        in.put(rest).put(bytes, 0, length).flip();
        decode(in, false);
        rest = in;
    }

    void end() {
        decode(rest, true);
    }

    private void decode(ByteBuffer in, boolean last) {
        boolean more = true;
        while (more) {
            more = decoder.decode(in, chars, last).isOverflow();
            chars.flip();
            byte[] out = chars.toString().getBytes(StandardCharsets.UTF_8);
            taker.take(out, out.length);
            chars.clear();
        }
    }
}
