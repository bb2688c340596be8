//! A pen that writes short SVG path data, and the courses it follows.
