package io.faultwright.field;

import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.quantity.Decimals;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.Splices;
import io.faultwright.syntax.Written;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** Puts updated frequencies into the files of a knowledge base, and leaves every other byte. */
public final class FrequencyEdit {
  private static final String FREQUENCY = "frequency";

  private final KnowledgeBase kb;
  private final Sources before;
  private final UnaryOperator<String> disk;

  /**
   * Into a knowledge base.
   *
   * @param before its files
   * @param disk the text of a file, by its path, with the line ends it has
   */
  public FrequencyEdit(KnowledgeBase kb, Sources before, UnaryOperator<String> disk) {
    this.kb = kb;
    this.before = before;
    this.disk = disk;
  }

  /** The new text of every file that changes, by path, with its line ends. */
  public SortedMap<String, String> of(Collection<FrequencyUpdate> updates) {
    SortedMap<String, List<FrequencyUpdate>> byFile = new TreeMap<>();
    updates.stream()
        .filter(update -> update.counted() > 0)
        .forEach(
            update ->
                byFile
                    .computeIfAbsent(file(update.fault()), path -> new ArrayList<>())
                    .add(update));
    SortedMap<String, String> changed = new TreeMap<>();
    byFile.forEach((path, some) -> changed.put(path, edited(path, some)));
    return changed;
  }

  /** The knowledge base as it will be. */
  public Sources after(SortedMap<String, String> changed) {
    Map<String, SourceFile> files = new LinkedHashMap<>();
    before.files().forEach(file -> files.put(file.path(), file));
    changed.forEach((path, raw) -> files.put(path, SourceFile.of(path, raw)));
    return new Sources(files.values());
  }

  /** What was written must say what was shown. */
  public static void requireWritten(KnowledgeBase after, Collection<FrequencyUpdate> updates) {
    for (FrequencyUpdate update : updates) {
      if (!after.faults().get(update.fault()).frequency().equals(update.after())) {
        throw new IllegalStateException(
            "the frequency of " + update.fault() + " was not written as it was shown");
      }
    }
  }

  private String file(String fault) {
    return kb.faults().get(fault).place().file();
  }

  private String edited(String path, List<FrequencyUpdate> updates) {
    SourceFile file = before.find(path).orElseThrow();
    Written faults = Written.of(file).flatMap(all -> all.find("faults")).orElseThrow();
    Splices splices = new Splices(disk.apply(path));
    for (FrequencyUpdate update : updates) {
      Fault fault = kb.faults().get(update.fault());
      edit(
          faults.find(fault.id()).orElseThrow(),
          Decimals.show(update.after()),
          file.text(),
          splices);
    }
    return splices.apply();
  }

  private static void edit(Written fault, String frequency, String text, Splices splices) {
    fault
        .find(FREQUENCY)
        .ifPresentOrElse(
            value -> splices.replace(value.start(), value.end(), frequency),
            () -> add(fault, FREQUENCY + ": " + frequency, text, splices));
  }

  /** A fault that does not say how often it is met says so behind its title from now on. */
  private static void add(Written fault, String line, String text, Splices splices) {
    Written title = fault.find("title").orElseThrow();
    if (fault.flow()) {
      splices.insert(title.end(), ", " + line);
      return;
    }
    int begin = text.lastIndexOf('\n', fault.start() - 1) + 1;
    int end = text.indexOf('\n', title.end());
    String indented = " ".repeat(fault.start() - begin) + line;
    if (end < 0) {
      splices.insert(text.length(), "\n" + indented);
    } else {
      splices.insert(end + 1, indented + "\n");
    }
  }
}
