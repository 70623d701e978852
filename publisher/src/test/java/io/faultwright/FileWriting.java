package io.faultwright;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaConstructorCall;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import java.io.FileDescriptor;
import java.nio.file.Files;
import java.util.Set;

/** What counts as writing files. */
final class FileWriting {
  private static final Set<String> CLASSES =
      Set.of("java.io.FileWriter", "java.io.FileOutputStream", "java.io.RandomAccessFile");

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

  /** A standard stream is opened by its descriptor and is no file. */
  static final DescribedPredicate<JavaConstructorCall> OPENING =
      DescribedPredicate.describe(
          "opens a file for writing",
          call ->
              CLASSES.contains(call.getTargetOwner().getName())
                  && call.getTarget().getRawParameterTypes().stream()
                      .noneMatch(type -> type.isEquivalentTo(FileDescriptor.class)));

  private FileWriting() {}
}
