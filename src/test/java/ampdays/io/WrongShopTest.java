package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import ampdays.scenario.PricedPart;
import ampdays.shop.Shop;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Wrong shop files and the exact message each gets, and the right one; there is no outside source for the wording. */
class WrongShopTest {
    private static final String RIGHT = WrongScenarioTest.resource("right-shop.yaml");

    @TempDir
    private Path folder;

    @BeforeEach
    void pictures() throws IOException {
        Files.write(folder.resolve("logo.png"), header(300, 100));
        Files.write(folder.resolve("huge.png"), header(60_000, 60_000));
        Files.writeString(
                folder.resolve("external.svg"),
                "<svg xmlns=\"http://www.w3.org/2000/svg\"><image href=\"http://example.invalid/x.png\"/></svg>");
        Files.writeString(
                folder.resolve("bomb.svg"),
                "<?xml version=\"1.0\"?><!DOCTYPE svg [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;\">]><svg>&b;</svg>");
    }

    /** The first chunk of a PNG that says how large it is (ISO/IEC 15948:2004, 11.2.2). */
    private static byte[] header(int width, int height) {
        ByteBuffer bytes = ByteBuffer.allocate(33);
        bytes.put(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n', 0, 0, 0, 13, 'I', 'H', 'D', 'R'});
        bytes.putInt(width).putInt(height);
        return bytes.array();
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void eachMistakeGetsItsMessages(Mistake wrong) throws IOException {
        String text = wrong.in(RIGHT);
        Path file = Files.writeString(folder.resolve("shop.yaml"), text);
        InputException refused = catchThrowableOfType(InputException.class, () -> ShopReader.read(file));
        assertThat(refused.problems().stream().map(InputProblem::toString)).containsExactlyElementsOf(wrong.messages());
    }

    static Stream<Mistake> mistakes() {
        return Mistake.of("wrong-shops.txt");
    }

    @Test
    void theRightOneIsReadWhole() throws Exception {
        Shop shop = ShopReader.read(Files.writeString(folder.resolve("shop.yaml"), RIGHT));
        assertThat(shop.name()).isEqualTo("Invented workshop");
        assertThat(shop.contact()).containsExactly("12 Invented Street");
        assertThat(shop.unitPrices()).containsEntry(PricedPart.SOLAR, 320.5);
        assertThat(shop.unitPrices()).doesNotContainKey(PricedPart.COVERS);
        assertThat(shop.price("less heat")).hasValue(2350);
        assertThat(shop.terms()).containsExactly("Sales tax not included.", "Prices hold for 60 days.");
        assertThat(shop.logo()).isPresent();
    }

    @Test
    void aSumMayHaveTheCurrencyOfTheFile() throws Exception {
        String said = RIGHT.replace("320.50", "320.50 USD").replace("2350", "2350USD");
        Shop shop = ShopReader.read(Files.writeString(folder.resolve("shop.yaml"), said));
        assertThat(shop.unitPrices()).containsEntry(PricedPart.SOLAR, 320.5);
        assertThat(shop.price("less heat")).hasValue(2350);
    }
}
