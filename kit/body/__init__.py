"""Bodies: measurements by name, size charts, and the table that says how each is taken."""

from kit.body.body import Body, Measure
from kit.body.chart import SizeChart, load_chart, read_chart, workshop_chart
from kit.body.make import make_body
from kit.body.measures import MEASUREMENTS, Measurement, measurement, plausible, said

__all__ = [
    "Body",
    "Measure",
    "SizeChart",
    "load_chart",
    "read_chart",
    "workshop_chart",
    "make_body",
    "MEASUREMENTS",
    "Measurement",
    "measurement",
    "plausible",
    "said",
]
