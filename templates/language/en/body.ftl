# How a body is named on pieces and pages: a size of the chart or a person's label, or what is drawn without a body.

body-size = size { $name }
body-one_size = one size
