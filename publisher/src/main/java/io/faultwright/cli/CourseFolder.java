package io.faultwright.cli;

import io.faultwright.output.Refused;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Folders that commands of a course write, each known by one of its files. None is replaced with
 * what another command writes: a quiz holds the keys without which nothing can be graded, and a
 * register is all by which a certificate holds.
 */
enum CourseFolder {
  QUIZ("quiz.json", "a quiz"),
  GRADES("grades.json", "grades"),
  CERTIFICATES("register/register.json", "a register of certificates"),
  SESSION("lesson.js", "the pages of a session");

  private final String file;
  private final String title;

  CourseFolder(String file, String title) {
    this.file = file;
    this.title = title;
  }

  /** The file that such a folder is known by. */
  Path in(Path folder) {
    return folder.resolve(file);
  }

  /**
   * Looks whether a folder of this kind may be written there.
   *
   * @throws Refused where the folder is one of another kind
   */
  void require(Path to) {
    for (CourseFolder other : values()) {
      if (other != this && Files.exists(other.in(to))) {
        throw new Refused(
            "`" + to + "` holds " + other.title, "write to another folder, so that it is kept");
      }
    }
  }
}
