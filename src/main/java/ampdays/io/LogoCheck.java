package ampdays.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Whether a picture file may go into a page: PNG or JPEG of a sensible size, told from its first bytes and its header
 * alone, so that nothing large is unpacked to find out. Formats: ISO/IEC 15948:2004 (PNG), ISO/IEC 10918-1 (JPEG).
 */
final class LogoCheck {
    private static final int MOST_BYTES = 4 << 20;
    private static final int MOST_PIXELS_A_SIDE = 5000;
    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final String ADVICE = " Save it as a PNG or JPEG file, some 600 pixels wide.";

    private LogoCheck() {}

    /** The file, or one byte more than may be of a larger one. */
    static byte[] read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(MOST_BYTES + 1);
        }
    }

    /** What is wrong with it, as a predicate; empty when it is fit. */
    static Optional<String> complaint(byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            return Optional.of("is larger than " + (MOST_BYTES >> 20) + " MB." + ADVICE);
        }
        if (isSvg(bytes)) {
            return Optional.of("is an SVG drawing, which could fetch or run things in a reader's hands." + ADVICE);
        }
        int[] size = isPng(bytes) ? pngSize(bytes) : jpegSize(bytes);
        if (size.length == 0) {
            return Optional.of("is neither a PNG nor a JPEG picture." + ADVICE);
        }
        if (size[0] < 1 || size[1] < 1 || size[0] > MOST_PIXELS_A_SIDE || size[1] > MOST_PIXELS_A_SIDE) {
            return Optional.of("says that it is " + size[0] + " by " + size[1] + " pixels; at most "
                    + MOST_PIXELS_A_SIDE + " by " + MOST_PIXELS_A_SIDE + " are taken." + ADVICE);
        }
        return Optional.empty();
    }

    private static boolean isSvg(byte[] bytes) {
        String head = new String(bytes, 0, Math.min(bytes.length, 2000), StandardCharsets.ISO_8859_1);
        return head.contains("<?xml") || head.contains("<svg") || head.contains("<!DOCTYPE");
    }

    private static boolean isPng(byte[] bytes) {
        for (int i = 0; i < PNG.length; i++) {
            if (i >= bytes.length || bytes[i] != PNG[i]) {
                return false;
            }
        }
        return bytes.length >= 24;
    }

    /** Width and height stand in the first chunk. */
    private static int[] pngSize(byte[] bytes) {
        return new int[] {fourBytes(bytes, 16), fourBytes(bytes, 20)};
    }

    /** Width and height from the first frame header; empty when this is no JPEG. */
    private static int[] jpegSize(byte[] bytes) {
        int at = 2;
        boolean jpeg = bytes.length > 4 && twoBytes(bytes, 0) == 0xFFD8;
        while (jpeg && at + 9 < bytes.length && (bytes[at] & 0xFF) == 0xFF) {
            int marker = bytes[at + 1] & 0xFF;
            boolean frame = marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
            if (frame) {
                return new int[] {twoBytes(bytes, at + 7), twoBytes(bytes, at + 5)};
            }
            at += 2 + twoBytes(bytes, at + 2);
        }
        return new int[0];
    }

    private static int twoBytes(byte[] bytes, int at) {
        return (bytes[at] & 0xFF) << 8 | (bytes[at + 1] & 0xFF);
    }

    private static int fourBytes(byte[] bytes, int at) {
        return twoBytes(bytes, at) << 16 | twoBytes(bytes, at + 2);
    }
}
