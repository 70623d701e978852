/** Earlier states of a knowledge base, read from its Git repository; the only user of JGit. */
package io.faultwright.revision;
