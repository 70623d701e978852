package io.faultwright.page;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Which file of the site shows what; these names never change between revisions. */
public final class SitePaths {
  public static final String STYLE = "style.css";
  public static final String FONTS = "fonts/";
  public static final String SEARCH_SCRIPT = "search.js";
  public static final String SEARCH_INDEX = "search-index.js";
  public static final String DIAGNOSIS_SCRIPT = "diagnose.js";
  public static final String DIAGNOSIS_HANDBOOK = "guided/handbook.js";

  /** Runs on every page; the worker it speaks of lies beside it. */
  public static final String OFFLINE_SCRIPT = "offline.js";

  public static final String OFFLINE_WORDS = "offline-words.js";

  public static final String BOOK = "handbook.pdf";

  /** Names that Windows keeps for devices, whatever their ending. */
  private static final Set<String> DEVICES =
      Stream.concat(
              Stream.of("con", "prn", "aux", "nul"),
              IntStream.rangeClosed(0, 9).boxed().flatMap(i -> Stream.of("com" + i, "lpt" + i)))
          .collect(Collectors.toUnmodifiableSet());

  private SitePaths() {}

  /** The file that shows something. */
  public static String file(Target target) {
    return switch (target.kind()) {
      case START -> "index.html";
      case SYMPTOM, FAULT, READING, GUIDE, REFRIGERANT, SEQUENCE ->
          target.kind().word() + "/" + fileName(target.id()) + ".html";
      case COURSE -> file(sequence(target));
      case EQUIPMENT, FAMILY, OPTION, MODEL -> "equipment.html";
      case SAFETY, CAUTION -> "safety.html";
      case PARTS, PART -> "parts.html";
      case SEARCH -> "search.html";
      case DIAGNOSIS -> "diagnose.html";
      case STICKERS -> "stickers.html";
      case INDEX -> "a-z.html";
      case FINDINGS -> "findings.html";
      case CHANGES -> "what-changed.html";
      case BULLETIN -> "bulletin.html";
      case RELEASES -> "releases.html";
    };
  }

  /** The file that shows something, with the place in it where it shares the file. */
  public static String address(Target target) {
    return switch (target.kind()) {
      case FAMILY, OPTION, MODEL, CAUTION, PART, COURSE -> file(target) + "#" + target.anchor();
      default -> file(target);
    };
  }

  /** The sequence of a course; the id of a course begins with that of its sequence. */
  private static Target sequence(Target course) {
    return new Target(Target.Kind.SEQUENCE, course.id().split("\\.")[0]);
  }

  /** The file of a symptom's chart; {@code number} counts from 1. */
  public static String chart(String symptom, int number) {
    return "charts/" + fileName(symptom) + "-" + number + ".svg";
  }

  /** The file of the data of a symptom's diagnosis. */
  public static String diagnosis(String symptom) {
    return "guided/symptom-" + symptom + ".js";
  }

  /** The file of a curve that readings are read off. */
  public static String curve(String id) {
    return "guided/curve-" + id + ".js";
  }

  /** The file of a symptom's pocket card. */
  public static String card(String symptom) {
    return "cards/" + fileName(symptom) + ".pdf";
  }

  /** The file of a picture that guides show. */
  public static String picture(String path) {
    return "guide/" + path;
  }

  private static String fileName(String id) {
    return DEVICES.contains(id) ? "_" + id : id;
  }
}
