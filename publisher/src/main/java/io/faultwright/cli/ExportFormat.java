package io.faultwright.cli;

import io.faultwright.dmn.DmnExport;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.page.Edition;
import io.faultwright.page.SitePages;
import io.faultwright.render.dita.DitaExport;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** An open standard in which a handbook is exported, as a folder of files. */
enum ExportFormat {
  /** Darwin Information Typing Architecture, of OASIS: topics and a map. */
  DITA {
    @Override
    SortedMap<String, byte[]> files(KnowledgeBase kb) {
      Edition plain =
          new Edition(new TreeMap<>(), List.of(), new TreeMap<>(), false, false, Optional.empty());
      return new DitaExport(kb.handbook().language()).files(new SitePages(kb, plain).all());
    }
  },
  /** Decision Model and Notation, of the OMG: a file of decision tables for each symptom. */
  DMN {
    @Override
    SortedMap<String, byte[]> files(KnowledgeBase kb) {
      return DmnExport.files(kb);
    }
  };

  /** The files by name. */
  abstract SortedMap<String, byte[]> files(KnowledgeBase kb);
}
