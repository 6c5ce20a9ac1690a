/** The window's panes. The window's thread alone. */
package gelfront.viewer.desk;
