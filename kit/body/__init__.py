"""Bodies: measurements by name, size charts, cross-checks and advice, and the table that says how each is taken."""

from kit.body.advice import Advice, advise
from kit.body.body import Body, Measure
from kit.body.chart import SizeChart, load_chart, read_chart, workshop_chart
from kit.body.check import check_body
from kit.body.file import load_body, save_body
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
    "load_body",
    "save_body",
    "check_body",
    "advise",
    "Advice",
    "MEASUREMENTS",
    "Measurement",
    "measurement",
    "plausible",
    "said",
]
