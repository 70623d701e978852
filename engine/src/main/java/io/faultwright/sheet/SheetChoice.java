package io.faultwright.sheet;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.model.KnowledgeBase;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Finds which sheet of a file holds which table. */
final class SheetChoice {
  private final SheetFile file;
  private final SortedMap<String, String> names;

  private SheetChoice(SheetFile file, KnowledgeBase kb) {
    this.file = file;
    this.names = SheetNames.of(kb.limits().keySet());
  }

  /**
   * The sheet of each table that is to be imported.
   *
   * @param readings whose tables; without any, the names of the sheets say it
   */
  static SortedMap<String, Grid> of(SheetFile file, Collection<String> readings, KnowledgeBase kb) {
    Tables.require(kb, readings);
    SheetChoice choice = new SheetChoice(file, kb);
    SortedMap<String, Grid> chosen =
        readings.isEmpty() ? choice.byName() : choice.named(List.copyOf(readings));
    chosen.forEach(choice::requireRows);
    return chosen;
  }

  private SortedMap<String, Grid> named(List<String> readings) {
    SortedMap<String, Grid> chosen = new TreeMap<>();
    if (readings.size() == 1 && file.sheets().size() == 1) {
      chosen.put(readings.get(0), file.sheets().get(0));
      return chosen;
    }
    readings.forEach(id -> chosen.put(id, sheet(id)));
    return chosen;
  }

  private Grid sheet(String table) {
    String name = names.get(table);
    List<String> there = file.sheets().stream().flatMap(one -> one.sheet().stream()).toList();
    return file.sheets().stream()
        .filter(one -> one.sheet().filter(name::equalsIgnoreCase).isPresent())
        .findFirst()
        .orElseThrow(
            () ->
                file.unreadable(
                    there.isEmpty()
                        ? "a CSV file holds one table, not several"
                        : "there is no sheet \"" + name + "\"",
                    there.isEmpty()
                        ? "name one table with `--limits`"
                        : NearMatch.help(name, there)));
  }

  private SortedMap<String, Grid> byName() {
    SortedMap<String, Grid> chosen = new TreeMap<>();
    file.sheets().forEach(sheet -> chosen.put(table(sheet), sheet));
    return chosen;
  }

  private String table(Grid sheet) {
    String name = sheet.sheet().orElseGet(this::stem);
    return SheetNames.table(name, names)
        .orElseThrow(
            () ->
                file.unreadable(
                    sheet.sheet().isPresent()
                        ? "there is no table of limits for the sheet \"" + name + "\""
                        : "nothing says which table this is",
                    help(name)));
  }

  private String help(String name) {
    return NearMatch.of(name, names.values())
        .map(near -> "did you mean `" + near + "`? ")
        .orElse("")
        .concat("name the tables to import with `--limits`");
  }

  private String stem() {
    String last = file.name().substring(file.name().lastIndexOf('/') + 1);
    return Optional.of(last.lastIndexOf('.'))
        .filter(dot -> dot > 0)
        .map(dot -> last.substring(0, dot))
        .orElse(last);
  }

  /** An empty sheet more likely is the wrong one than a wish to delete every row. */
  private void requireRows(String table, Grid sheet) {
    if (sheet.rows().size() < 2) {
      String where = sheet.sheet().map(name -> "the sheet \"" + name + "\"").orElse("the file");
      throw file.unreadable(
          where + " has no rows for `" + table + "`", "write a heading, and a row below it");
    }
  }
}
