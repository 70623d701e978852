package io.faultwright.syntax;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import java.util.Optional;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/** Reads the YAML of one file into a tree. */
public final class YamlReader {
  /** Characters a file may have; the YAML library's own limit of 3 MB is raised to this. */
  static final int LARGEST = 32 * 1024 * 1024;

  private YamlReader() {}

  /** The tree of a file; what is wrong with the file goes to the problems. */
  public static Tree read(SourceFile file, Problems problems) {
    Optional<Problem> refused =
        file.text().length() > LARGEST
            ? Optional.of(tooLarge(file))
            : Characters.firstRefused(file);
    refused.ifPresent(problems::add);
    return refused.isPresent() ? broken(file) : parse(file, problems);
  }

  private static Problem tooLarge(SourceFile file) {
    return Problem.at(
        new Place(file.path(), 1, 1, 1),
        "the file has more than " + LARGEST + " characters",
        "split it; files are merged by id");
  }

  private static Tree broken(SourceFile file) {
    return new Tree(file.path(), Optional.empty(), false);
  }

  private static Tree parse(SourceFile file, Problems problems) {
    Lines lines = new Lines(file);
    try {
      TreeBuilder builder = new TreeBuilder(new Events(parser(file), lines), lines, problems);
      Optional<Node> root = builder.document();
      return builder.whole() ? new Tree(file.path(), root, true) : broken(file);
    } catch (MarkedYAMLException mistake) {
      problems.add(new SyntaxMistake(mistake, lines).problem());
    }
    return broken(file);
  }

  private static ParserImpl parser(SourceFile file) {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(LARGEST);
    return new ParserImpl(new StreamReader(file.text()), options);
  }
}
