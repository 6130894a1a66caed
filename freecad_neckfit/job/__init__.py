"""What the designer states: parameters, quantities, parts, frames, and the job file."""
