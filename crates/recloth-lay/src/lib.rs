//! Placeholder of the workspace's shape.
