/** Frozen releases, each in a folder of its own. */
package io.faultwright.archive;
