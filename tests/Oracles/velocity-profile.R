# Load-velocity profiles by R's own functions (R Core Team, stats: lm, predict.lm, uniroot), apart from the program.
#
#   Rscript velocity-profile.R < velocity-points.csv > velocity-profile-r.csv
#
# Of each set and threshold: the line of velocity on load with R2 and residual standard error, the load at velocity 0, the
# load at the threshold, and the loads between which the threshold lies within the 95 % prediction interval of one more
# observation, found by searching for its ends. Empty where the slope does not differ from 0 at 5 % or two points leave
# no error. Then the line of load on velocity and its load at the threshold.
points <- read.csv(file("stdin"), comment.char = "#")
cat("# made by velocity-profile.R with", R.version.string, "of velocity-points.csv\n")
cat("set,threshold,slope,intercept,r2,see,l0,one_rm,low,high,other_slope,other_intercept,other_one_rm\n")
for (name in unique(points$set)) {
  set <- points[points$set == name, ]
  fit <- lm(velocity ~ load, set)
  other <- lm(load ~ velocity, set)
  for (threshold in c(0.17, 0.30)) {
    b <- unname(coef(fit))
    at <- (threshold - b[1]) / b[2]
    ends <- c(NA, NA)
    if (nrow(set) > 2 && summary(fit)$coefficients[2, 4] < 0.05) {
      limit <- function(x, side) predict(fit, data.frame(load = x), interval = "prediction", level = 0.95)[1, side] - threshold
      ends <- c(uniroot(limit, c(at - 1e4, at), side = "lwr", tol = 1e-11)$root,
                uniroot(limit, c(at, at + 1e4), side = "upr", tol = 1e-11)$root)
    }
    see <- if (nrow(set) > 2) summary(fit)$sigma else NA
    figures <- c(threshold, b[2], b[1], summary(fit)$r.squared, see, -b[1] / b[2], at, ends, coef(other)[2], coef(other)[1],
                 predict(other, data.frame(velocity = threshold)))
    cat(name, ifelse(is.na(figures), "", sprintf("%.12g", figures)), sep = ",")
    cat("\n")
  }
}
