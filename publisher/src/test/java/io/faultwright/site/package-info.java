/** Tests of whole published handbooks. */
package io.faultwright.site;
