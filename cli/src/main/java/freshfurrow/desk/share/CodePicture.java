package freshfurrow.desk.share;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/** A link as a code that phones read from a screen (QR, ISO/IEC 18004). */
final class CodePicture {
    /** As wide as the standard wants the blank edge, modules. */
    private static final int QUIET_ZONE = 4;

    private CodePicture() {}

    /** One path of squares in a picture of as many units as the code has modules. */
    static Picture of(String link) {
        try {
            BitMatrix code = new QRCodeWriter()
                    .encode(
                            link,
                            BarcodeFormat.QR_CODE,
                            0,
                            0,
                            Map.of(
                                    EncodeHintType.MARGIN,
                                    QUIET_ZONE,
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.M));
            StringBuilder path = new StringBuilder();
            for (int y = 0; y < code.getHeight(); y++) {
                for (int x = 0; x < code.getWidth(); x++) {
                    if (code.get(x, y)) {
                        path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
                    }
                }
            }
            return new Picture(code.getWidth(), path.toString());
        } catch (WriterException e) {
            throw new IllegalStateException("a link that is no code: " + link, e);
        }
    }

    /**
     * A code to be drawn.
     *
     * @param size of its side, modules
     * @param path its dark modules, as the path of an SVG
     */
    record Picture(int size, String path) {}
}
