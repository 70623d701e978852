package io.faultwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;

/**
 * The examples of a page. A block {@code yaml example=NAME file=FILE} is a file of an example; with
 * {@code uses=OTHER} the example has the files of another one too, apart from those it replaces. A
 * block {@code text example=NAME} with {@code check}, {@code problems}, {@code apart}, {@code
 * run=CASE}, {@code explain=CASE} or {@code ahead=CASE} holds the whole output of that command. A
 * block {@code csv example=NAME} is a sheet for it; {@code export=READING} and {@code
 * import=READING} show the sheet, or what comes of it.
 */
final class Examples {
  private final MarkdownPage page;
  private final Map<String, Map<String, SourceFile>> files = new LinkedHashMap<>();
  private final Map<String, String> sheets = new LinkedHashMap<>();
  private final Set<String> bases = new LinkedHashSet<>();

  private Examples(MarkdownPage page) {
    this.page = page;
    page.fences().stream().filter(fence -> fence.language().equals("yaml")).forEach(this::file);
    page.fences().stream()
        .filter(fence -> fence.language().equals("csv"))
        .forEach(fence -> sheets.put(name(fence), fence.body()));
  }

  /** A test for every output shown, and for every example without one. */
  static Stream<DynamicTest> tests(MarkdownPage page) {
    Examples examples = new Examples(page);
    if (Stored.BLESS) {
      examples.bless();
      examples = new Examples(MarkdownPage.read(Stored.DOCS.resolve(page.name())));
    }
    return Stream.concat(examples.outputTests(), examples.silentTests());
  }

  private void file(Fence fence) {
    Map<String, SourceFile> example =
        files.computeIfAbsent(name(fence), name -> new TreeMap<>(used(fence)));
    String path = fence.value("file").orElseThrow(() -> fault(fence, "no `file=`"));
    example.put(path, SourceFile.of(path, fence.body()));
  }

  private Map<String, SourceFile> used(Fence fence) {
    fence.value("uses").ifPresent(bases::add);
    return fence.value("uses").map(files::get).orElse(Map.of());
  }

  private String name(Fence fence) {
    return fence.value("example").orElseThrow(() -> fault(fence, "no `example=`"));
  }

  private AssertionError fault(Fence fence, String what) {
    return new AssertionError(page.name() + ":" + fence.line() + ": " + what);
  }

  private Stream<Fence> outputs() {
    return page.fences().stream().filter(fence -> fence.language().equals("text"));
  }

  private Stream<DynamicTest> outputTests() {
    return outputs()
        .map(
            fence ->
                DynamicTest.dynamicTest(
                    "line " + fence.line() + ": " + fence.info(),
                    () -> assertEquals(fence.body(), output(fence))));
  }

  private Stream<DynamicTest> silentTests() {
    List<String> shown = outputs().map(this::name).toList();
    return files.keySet().stream()
        .filter(name -> !shown.contains(name) && !bases.contains(name))
        .map(name -> DynamicTest.dynamicTest(name + " has no error", () -> assertClean(name)));
  }

  private void assertClean(String name) {
    assertEquals(0, tool(name).checked().report().errors(), () -> tool(name).check());
  }

  private String output(Fence fence) {
    Tool tool = tool(name(fence));
    if (fence.says("check")) {
      return tool.check();
    }
    if (fence.says("apart")) {
      return tool.apart();
    }
    return fence
        .value("run")
        .map(id -> tool.run(id, false))
        .or(() -> fence.value("explain").map(id -> tool.run(id, true)))
        .or(() -> fence.value("ahead").map(tool::ahead))
        .or(() -> fence.value("export").map(tool::export))
        .or(() -> fence.value("import").map(id -> tool.imports(id, sheets.get(name(fence)))))
        .orElseGet(() -> problems(fence, tool));
  }

  private String problems(Fence fence, Tool tool) {
    assertTrue(fence.says("problems"), () -> fault(fence, "which output?").getMessage());
    return tool.problems();
  }

  private Tool tool(String name) {
    assertTrue(files.containsKey(name), () -> "no example `" + name + "`");
    return new Tool(new Sources(files.get(name).values()));
  }

  private void bless() {
    Map<Fence, String> bodies = new LinkedHashMap<>();
    outputs().forEach(fence -> bodies.put(fence, output(fence)));
    page.rewrite(bodies);
  }
}
