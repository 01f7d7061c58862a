import java.io.ByteArrayOutputStream;
import java.io.StringReader;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.PNGTranscoder;

/** The least that a picture costs: one small SVG to PNG through Batik. */
public final class BarePicture {

  private BarePicture() {}

  public static void main(String[] args) throws Exception {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' width='600' height='90'>"
            + "<path d='M0 90 H600 V30 A12 12 0 0 0 588 18 H12 A12 12 0 0 0 0 30 Z'/></svg>";
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    PNGTranscoder transcoder = new PNGTranscoder();
    transcoder.addTranscodingHint(PNGTranscoder.KEY_WIDTH, 1600f);
    transcoder.transcode(
        new TranscoderInput(new StringReader(svg)), new TranscoderOutput(png));
    System.out.println(png.size() + " bytes");
  }
}
