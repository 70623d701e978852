/**
 * What lets a published handbook be used without a network: the worker that keeps it on a device,
 * what a device needs to install it, and the whole of it as one file.
 */
package io.faultwright.offline;
