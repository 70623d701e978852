package io.faultwright.syntax;

import java.util.Optional;

/**
 * What one YAML file holds.
 *
 * @param path path relative to the knowledge base
 * @param root its content; absent where the file is empty or not whole
 * @param whole whether the file could be read to its end
 */
public record Tree(String path, Optional<Node> root, boolean whole) {}
