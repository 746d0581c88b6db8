package ampdays.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;

/** Standard output, which the program it is piped to may stop reading, as {@code head} does: the rest then goes nowhere. */
final class Screen extends OutputStream {
    private final OutputStream out;
    private boolean readerGone;

    Screen() {
        this(new FileOutputStream(FileDescriptor.out));
    }

    Screen(OutputStream out) {
        this.out = out;
    }

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
        if (readerGone) {
            return;
        }
        try {
            out.write(bytes, from, count);
        } catch (IOException e) {
            // the one sign of it that Java passes on; the system's words, which the Java runtime does not translate
            readerGone = String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT).contains("pipe");
            if (!readerGone) {
                throw e;
            }
        }
    }
}
