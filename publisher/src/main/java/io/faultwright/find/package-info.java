/**
 * The search of the site: an index built at publishing, and the script that looks things up in it
 * on the technician's device.
 */
package io.faultwright.find;
