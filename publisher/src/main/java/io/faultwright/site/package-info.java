/** Publishes a handbook: pages, charts and book into one folder. */
package io.faultwright.site;
