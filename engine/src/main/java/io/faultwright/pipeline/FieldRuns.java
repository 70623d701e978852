package io.faultwright.pipeline;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.field.FieldCase;
import io.faultwright.input.CaseFile;
import io.faultwright.input.CaseInput;
import io.faultwright.input.TableUse;
import io.faultwright.model.Case;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.resolve.ColumnMap;
import io.faultwright.resolve.GivenCase;
import io.faultwright.resolve.Resolution;
import io.faultwright.resolve.Resolver;
import io.faultwright.run.Runner;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.io.BufferedReader;
import java.util.function.Consumer;

/** Runs recorded jobs through the rules, quickly and without the reasons. */
public final class FieldRuns {
  private final Resolution resolution;
  private final Runner runner;

  /**
   * For the knowledge base in these files.
   *
   * @throws io.faultwright.diagnostic.Unreadable with every problem of every file
   */
  public FieldRuns(Sources sources) {
    this.resolution = Resolver.resolution(sources);
    this.runner = new Runner(knowledge(), RuleCompiler.compile(knowledge()));
  }

  public KnowledgeBase knowledge() {
    return resolution.knowledge();
  }

  /**
   * What a file says about the columns of a table.
   *
   * @throws io.faultwright.diagnostic.Unreadable with every problem of the file
   */
  public ColumnMap columns(SourceFile file) {
    return resolution.columns(file);
  }

  /**
   * The jobs of a file, one by one, in memory that does not grow with a table.
   *
   * @param path what to call the file in messages
   * @param map what its columns mean, where it is a table
   * @param each is given every job as soon as it was run
   * @throws io.faultwright.diagnostic.Unreadable where the file as a whole makes no sense
   */
  public InputRun of(String path, BufferedReader text, ColumnMap map, Consumer<FieldCase> each) {
    CaseInput input = CaseFile.open(path, text, knowledge(), TableUse.foreign(map));
    return InputRun.of(
        path,
        input,
        resolution.intake(),
        one -> {
          FieldCase job = run(one);
          each.accept(job);
          return job.agrees();
        });
  }

  private FieldCase run(GivenCase one) {
    Case job = one.recorded();
    return new FieldCase(job, one.judged(), runner.firing(job.symptom(), job.given()));
  }
}
