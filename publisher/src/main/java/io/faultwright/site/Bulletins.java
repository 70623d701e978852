package io.faultwright.site;

import io.faultwright.layout.Paper;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.page.Bulletin;
import io.faultwright.page.BulletinSheet;
import io.faultwright.page.ChangedTexts;
import io.faultwright.page.PrintedCopies;
import io.faultwright.page.Since;
import io.faultwright.page.Tongue;
import io.faultwright.render.html.BulletinHtml;
import io.faultwright.render.pdf.PdfPrinter;
import io.faultwright.render.text.BulletinText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Makes the bulletin of a new revision, in each language of the handbook. */
public final class Bulletins {
  private final KnowledgeBase kb;
  private final Paper paper;
  private final boolean preview;

  /**
   * For a handbook.
   *
   * @param kb the new revision
   * @param preview whether it is not released yet
   */
  public Bulletins(KnowledgeBase kb, Paper paper, boolean preview) {
    this.kb = kb;
    this.paper = paper;
    this.preview = preview;
  }

  /**
   * What is to be told; nothing where only texts changed.
   *
   * @param reasons why it changed, a paragraph each
   */
  public Optional<Bulletin> bulletin(Since since, List<String> reasons) throws IOException {
    return bulletin(since, reasons, new PrintedDifferences(since.before(), kb, paper)::all);
  }

  /**
   * The same where the charts are drawn already.
   *
   * @param charts of the new revision, no drafts, on the same paper
   */
  public Optional<Bulletin> bulletin(
      Since since, List<String> reasons, SortedMap<String, SortedMap<String, Drawn>> charts)
      throws IOException {
    return bulletin(
        since, reasons, () -> new PrintedDifferences(since.before(), kb, paper).all(charts));
  }

  /** Finds out which printed copies differ. */
  private interface Differences {
    SortedMap<String, PrintedCopies> all() throws IOException;
  }

  private Optional<Bulletin> bulletin(Since since, List<String> reasons, Differences printed)
      throws IOException {
    return Bulletin.isDue(since.comparison())
        ? Optional.of(new Bulletin(since, reasons, kb.handbook().language(), printed.all()))
        : Optional.empty();
  }

  /**
   * The bulletin as files: text for a mail and, where it is asked for, PDF; of a preview also a
   * page.
   */
  public SortedMap<String, byte[]> files(Bulletin bulletin, boolean pdf) throws IOException {
    SortedMap<String, byte[]> files = new TreeMap<>();
    Languages languages = new Languages(kb);
    for (Tongue tongue : languages.all()) {
      Since since = languages.in(bulletin.since(), tongue);
      BulletinSheet sheet = BulletinSheet.of(languages.in(tongue), bulletin.with(since), preview);
      String name = name("bulletin", tongue);
      files.put(name + ".txt", utf8(new BulletinText(sheet.frame()).write(sheet)));
      if (preview) {
        files.put(name + ".html", utf8(new BulletinHtml().preview(sheet)));
      }
      if (pdf) {
        String html = new BulletinHtml().paper(sheet, paper);
        files.put(name + ".pdf", new PdfPrinter().print(html, sheet.date()).bytes());
      }
    }
    return files;
  }

  /** What stands in for a bulletin where only texts changed. */
  public SortedMap<String, byte[]> changedTexts(Since since) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    Languages languages = new Languages(kb);
    for (Tongue tongue : languages.all()) {
      ChangedTexts texts =
          ChangedTexts.of(languages.in(tongue), languages.in(since, tongue), preview);
      files.put(
          name("changed-texts", tongue) + ".txt",
          utf8(new BulletinText(texts.frame()).write(texts)));
    }
    return files;
  }

  /** The handbook's own language has the plain name. */
  private static String name(String name, Tongue tongue) {
    return tongue.folder().isEmpty() ? name : name + "." + tongue.tag();
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
