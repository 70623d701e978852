/** Text as it was read, and the places in it. */
package io.faultwright.source;
