package io.faultwright.site;

import io.faultwright.finding.Finding;
import io.faultwright.layout.Paper;
import io.faultwright.page.Bulletin;
import io.faultwright.page.Released;
import io.faultwright.page.Since;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How to publish.
 *
 * @param draft mark every page as a draft and print the findings
 * @param findings what the checking found
 * @param pdf also make the book
 * @param paper sheet size of the book
 * @param since the earlier revision whose differences are told, if any
 * @param bulletin what the field is told of this release, if anything
 * @param releases this release and those before it; empty where this is none
 * @param pictures pictures that guides may show, by path relative to the {@code guides} folder
 */
public record Options(
    boolean draft,
    List<Finding> findings,
    boolean pdf,
    Paper paper,
    Optional<Since> since,
    Optional<Bulletin> bulletin,
    List<Released> releases,
    SortedMap<String, byte[]> pictures) {
  public Options {
    findings = List.copyOf(findings);
    releases = List.copyOf(releases);
    pictures = Collections.unmodifiableSortedMap(new TreeMap<>(pictures));
  }

  /** No release. */
  public Options(
      boolean draft,
      List<Finding> findings,
      boolean pdf,
      Paper paper,
      Optional<Since> since,
      SortedMap<String, byte[]> pictures) {
    this(draft, findings, pdf, paper, since, Optional.empty(), List.of(), pictures);
  }

  /** Without a comparison with an earlier revision. */
  public Options(
      boolean draft,
      List<Finding> findings,
      boolean pdf,
      Paper paper,
      SortedMap<String, byte[]> pictures) {
    this(draft, findings, pdf, paper, Optional.empty(), pictures);
  }

  /** A release, without pictures, on A4. */
  public static Options release(boolean pdf) {
    return new Options(false, List.of(), pdf, Paper.A4, new TreeMap<>());
  }

  /** A draft with its findings, without pictures, on A4. */
  public static Options draft(List<Finding> findings, boolean pdf) {
    return new Options(true, findings, pdf, Paper.A4, new TreeMap<>());
  }
}
