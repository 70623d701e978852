package io.faultwright;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import java.nio.file.Files;
import java.util.Set;

/** What counts as writing files. */
final class FileWriting {
  private static final Set<String> CLASSES =
      Set.of(
          "java.io.FileWriter",
          "java.io.FileOutputStream",
          "java.io.RandomAccessFile",
          "java.nio.channels.FileChannel");

  private static final Set<String> READING =
      Set.of(
          "exists",
          "notExists",
          "isDirectory",
          "isRegularFile",
          "isReadable",
          "isHidden",
          "isSymbolicLink",
          "isExecutable",
          "isSameFile",
          "readAllBytes",
          "readAllLines",
          "readString",
          "readAttributes",
          "readSymbolicLink",
          "lines",
          "list",
          "walk",
          "walkFileTree",
          "find",
          "newInputStream",
          "newBufferedReader",
          "newDirectoryStream",
          "size",
          "getLastModifiedTime",
          "probeContentType",
          "mismatch",
          "getAttribute");

  static final DescribedPredicate<JavaMethodCall> CALL =
      DescribedPredicate.describe(
          "a method of Files that changes something",
          call ->
              call.getTargetOwner().isEquivalentTo(Files.class)
                  && !READING.contains(call.getName()));

  static final DescribedPredicate<JavaClass> WRITER =
      DescribedPredicate.describe(
          "a class that writes files", type -> CLASSES.contains(type.getName()));

  private FileWriting() {}
}
