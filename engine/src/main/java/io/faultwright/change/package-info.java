/** What differs between two revisions of a knowledge base, as values; printing comes later. */
package io.faultwright.change;
