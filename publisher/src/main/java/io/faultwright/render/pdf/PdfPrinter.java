package io.faultwright.render.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import io.faultwright.font.Fonts;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Sets an XHTML document as PDF; equal documents give equal bytes. */
public final class PdfPrinter {
  private static final int REGULAR = 400;
  private static final int BOLD = 700;

  static {
    XRLog.setLoggingEnabled(false);
  }

  /**
   * Prints.
   *
   * @param xhtml well-formed, with its styles in it
   * @param date ISO 8601 date that the file says it was made on
   */
  public PdfBook print(String xhtml, String date) throws IOException {
    try (PdfBoxRenderer renderer = builder(xhtml).buildPdfRenderer()) {
      renderer.createPDFWithoutClosing();
      PDDocument document = renderer.getPdfDocument();
      Imprinting.imprint(document, date);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return new PdfBook(out.toByteArray(), document.getNumberOfPages(), Undrawn.in(xhtml));
    }
  }

  private static PdfRendererBuilder builder(String xhtml) {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.withHtmlContent(xhtml, "about:blank");
    builder.useSVGDrawer(new BatikSVGDrawer());
    builder.useFont(Fonts::regular, Fonts.FAMILY, REGULAR, FontStyle.NORMAL, true);
    builder.useFont(Fonts::bold, Fonts.FAMILY, BOLD, FontStyle.NORMAL, true);
    builder.useReplacementText("?");
    builder.usePdfUaAccessibility(true);
    builder.useExternalResourceAccessControl(
        (uri, type) -> uri.startsWith("data:image/"),
        ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
    builder.toStream(new ByteArrayOutputStream());
    return builder;
  }
}
