//! Values with units and an uncertainty budget, and how numbers are written and read.
