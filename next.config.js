/** @type {import('next').NextConfig} */
export default {
  poweredByHeader: false,
  typedRoutes: true,
  reactStrictMode: true,
  serverExternalPackages: ['pg', 'pg-copy-streams'],
};
